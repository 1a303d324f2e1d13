// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Answer;
import isohume.device.Trouble;
import isohume.run.watch.Fault;
import isohume.run.watch.Measure;
import isohume.run.watch.Policies;
import isohume.run.watch.Policy;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** What a run does about faults while nobody watches. */
class RunFaultsTest {
    private final Rig rig = Rig.thatWorks();

    @Test
    void a_night_without_a_fault_has_none_noticed() {
        assertEquals(Ending.COMPLETED, rig.run());
        assertEquals(List.of(), all(RunFact.Noticed.class));
    }

    @Test
    void a_silence_shorter_than_its_policy_is_waited_out_and_the_point_settles_anew() {
        Run run = rig.begin();
        atFirst(Phase.RECORD, () -> {
            rig.bench.probeSilent = true;
            later(Duration.ofSeconds(40), () -> rig.bench.probeSilent = false);
        });
        assertEquals(Ending.COMPLETED, run.carryOut());
        RunFact.Noticed noticed = all(RunFact.Noticed.class).getFirst();
        assertEquals(Fault.SILENT, noticed.fault());
        assertEquals("P-1/relative_humidity", noticed.channel());
        assertEquals(1, all(RunFact.Over.class).size());
        assertEquals(List.of(), all(RunFact.Acted.class));
        assertEquals(
                List.of("approach 1", "soak 1", "record 1", "approach 1", "approach 1", "soak 1", "record 1"),
                rig.phases().subList(0, 7));
        assertEquals(2, rig.course().recorded().size());
    }

    @Test
    void no_reading_of_a_record_that_a_fault_touched_is_kept() {
        Run run = rig.begin();
        atFirst(Phase.RECORD, () -> {
            rig.bench.chamberFlag = "the door is open";
            later(Duration.ofSeconds(30), () -> rig.bench.chamberFlag = "");
        });
        assertEquals(Ending.COMPLETED, run.carryOut());
        long over = numberOf(f -> f instanceof RunFact.Over);
        assertTrue(rig.course().recorded().getFirst().first() > over, "the record began when the door was shut");
    }

    @Test
    void what_a_chamber_calls_too_hot_brings_it_to_rest_at_once() {
        Run run = rig.begin();
        atFirst(Phase.SOAK, () -> rig.bench.chamberFlag = "over-temperature cut-out");
        assertEquals(Ending.STOPPED, run.carryOut());
        assertTrue(rig.bench.isAtRest());
        assertTrue(
                rig.course().why().contains("over-temperature cut-out"),
                rig.course().why());
        Instant noticed = rig.course().incidents().getFirst().at();
        assertEquals(noticed, rig.course().since(), "without another poll");
    }

    @Test
    void too_hot_while_held_is_too_hot_all_the_same() {
        Run run = rig.begin();
        run.order(Order.HOLD, "Ada", "lunch");
        later(Duration.ofMinutes(5), () -> rig.bench.chamberFlag = "over-temperature cut-out");
        assertEquals(Ending.STOPPED, run.carryOut());
        assertTrue(rig.bench.isAtRest());
    }

    @Test
    void a_policy_may_skip_the_point_instead_of_holding() {
        Run run = rig.begin(new Policies(Map.of(Fault.SILENT, new Policy(Duration.ofMinutes(2), Measure.SKIP))));
        atFirst(Phase.SOAK, () -> {
            rig.bench.probeSilent = true;
            later(Duration.ofMinutes(3), () -> rig.bench.probeSilent = false);
        });
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertEquals(List.of(1), rig.course().skipped());
        assertEquals(2, rig.course().recorded().getFirst().point());
    }

    @Test
    void little_room_on_the_disk_ends_the_run_after_the_point_at_work() {
        Run run = rig.begin();
        atFirst(Phase.SOAK, () -> run.warn(Fault.DISK_LOW, "disk", "40 MB left"));
        assertEquals(Ending.STOPPED, run.carryOut());
        assertEquals(1, rig.course().recorded().size());
        assertTrue(rig.course().why().contains("40 MB left"), rig.course().why());
    }

    @Test
    void a_clock_that_is_set_back_stops_no_poll_and_its_readings_are_not_used() {
        Run run = rig.begin();
        atFirst(Phase.RECORD, () -> rig.time.step(Duration.ofHours(-3)));
        assertEquals(Ending.COMPLETED, run.carryOut());
        RunFact.Noticed noticed = all(RunFact.Noticed.class).getFirst();
        assertEquals(Fault.CLOCK_STEPPED, noticed.fault());
        assertEquals("by -10800.0 s", noticed.evidence());
        long first = rig.course().recorded().getFirst().first();
        assertTrue(first > numberOf(f -> f instanceof RunFact.Noticed), "the record begins after the step");
        assertTrue(rig.time.elapsed().compareTo(Duration.between(Instant.EPOCH, Instant.parse("2026-03-02T09:30:00Z")))
                < 0);
    }

    @Test
    void a_point_whose_instrument_turns_out_to_have_been_frozen_is_taken_again() {
        Run run = rig.begin();
        atFirst(Phase.RECORD, () -> rig.bench.probeFrozen = true);
        rig.journal.onAppend = both(rig.journal.onAppend, fact -> {
            if (fact instanceof RunFact.Withdrawn) {
                rig.bench.probeFrozen = false;
            }
        });
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertEquals(1, all(RunFact.Withdrawn.class).size());
        assertEquals(Fault.FROZEN, all(RunFact.Noticed.class).getFirst().fault());
        assertEquals(
                List.of(1, 2, 1),
                all(RunFact.Recorded.class).stream()
                        .map(RunFact.Recorded::point)
                        .toList());
        assertEquals(2, rig.course().recorded().size());
    }

    @Test
    void a_reference_that_everything_else_contradicts_holds_the_run() {
        Run run = rig.begin();
        atFirst(Phase.SOAK, () -> rig.bench.mirrorOff = 3);
        stopWhenHeld(run);
        assertEquals(Ending.STOPPED, run.carryOut());
        RunFact.Acted acted = all(RunFact.Acted.class).getFirst();
        assertEquals(Fault.DISAGREEING, acted.fault());
        assertEquals("mirror/dew_point", acted.channel());
        assertEquals(List.of(), rig.course().recorded());
    }

    @Test
    void a_target_that_did_not_reach_the_chamber_is_sent_again() {
        rig.bench.deaf = true;
        later(Duration.ofSeconds(15), () -> rig.bench.deaf = false);
        assertEquals(Ending.COMPLETED, rig.begin().carryOut());
        assertEquals(3, all(RunFact.Asked.class).size(), "two points, and once in vain");
        assertEquals(List.of(), all(RunFact.Acted.class));
    }

    @Test
    void a_chamber_that_came_to_rest_by_itself_waits_for_a_person() {
        Run run = rig.begin();
        atFirst(Phase.SOAK, () -> rig.bench.holds = new Answer.AtRest());
        stopWhenHeld(run);
        assertEquals(Ending.STOPPED, run.carryOut());
        assertEquals(Fault.TARGET_LOST, all(RunFact.Acted.class).getFirst().fault());
    }

    @Test
    void a_chamber_that_does_not_confirm_its_rest_is_asked_again_and_the_last_fact_says_so() {
        rig.bench.restAnswer = new Answer.None(Trouble.SILENCE, "no reply within 1000 ms");
        assertEquals(Ending.COMPLETED, rig.run());
        assertEquals(100, rig.bench.calls.stream().filter("rest"::equals).count());
        assertEquals(1, all(RunFact.Rested.class).size(), "the same answer is not written again and again");
        assertTrue(rig.course().why().contains("did not confirm"), rig.course().why());
    }

    @Test
    void a_hold_that_nobody_ends_ends_with_the_chamber_at_rest() {
        Run run = rig.begin();
        run.order(Order.HOLD, "Ada", "");
        assertEquals(Ending.STOPPED, run.carryOut());
        assertTrue(rig.course().why().contains("nobody came"), rig.course().why());
        assertTrue(rig.bench.isAtRest());
    }

    @Test
    void what_was_there_is_waited_for_anew_when_a_person_says_to_go_on() {
        Run run = rig.begin();
        atFirst(Phase.SOAK, () -> rig.bench.probeSilent = true);
        rig.journal.onAppend = both(rig.journal.onAppend, fact -> {
            if (fact instanceof RunFact.Entered e && e.phase() == Phase.HELD) {
                rig.bench.probeSilent = false;
                run.order(Order.RESUME, "Ada", "plugged in again");
            }
        });
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertEquals(1, rig.phases().stream().filter("held 1"::equals).count());
        assertFalse(rig.course().touched());
    }

    private <T extends RunFact> List<T> all(Class<T> kind) {
        return rig.journal.runFacts().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private long numberOf(Predicate<RunFact> wanted) {
        List<RunFact> facts = rig.journal.runFacts();
        for (int i = 0; i < facts.size(); i++) {
            if (wanted.test(facts.get(i))) {
                return i + 1L;
            }
        }
        throw new AssertionError("no such fact");
    }

    private void atFirst(Phase phase, Runnable then) {
        boolean[] done = {false};
        rig.journal.onAppend = both(rig.journal.onAppend, fact -> {
            if (!done[0] && fact instanceof RunFact.Entered e && e.phase() == phase) {
                done[0] = true;
                then.run();
            }
        });
    }

    private void later(Duration wait, Runnable then) {
        Duration due = rig.time.elapsed().plus(wait);
        boolean[] done = {false};
        rig.journal.onAppend = both(rig.journal.onAppend, fact -> {
            if (!done[0] && rig.time.elapsed().compareTo(due) >= 0) {
                done[0] = true;
                then.run();
            }
        });
    }

    private void stopWhenHeld(Run run) {
        rig.journal.onAppend = both(rig.journal.onAppend, fact -> {
            if (fact instanceof RunFact.Entered e && e.phase() == Phase.HELD) {
                run.order(Order.STOP, "Ada", "");
            }
        });
    }

    private static Consumer<RunFact> both(Consumer<RunFact> one, Consumer<RunFact> other) {
        return one.andThen(other);
    }
}
