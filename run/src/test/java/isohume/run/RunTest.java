// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.journal.Fact;
import isohume.journal.JournalLost;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class RunTest {
    @Test
    void each_point_goes_through_approach_soak_and_record() {
        Rig rig = Rig.thatWorks();
        assertEquals(Ending.COMPLETED, rig.run());
        assertEquals(List.of("approach 1", "soak 1", "record 1", "approach 2", "soak 2", "record 2"), rig.phases());
        assertEquals(List.of(1, 2), pointsDone(rig));
        assertEquals(Phase.FINISHED, rig.course().phase());
        assertTrue(rig.bench.isAtRest());
    }

    @Test
    void by_what_is_still_to_come_a_point_soaks_until_its_instruments_have_settled_and_the_record_says_what_is_left() {
        Rig rig = Rig.thatWorks();
        assertEquals(Ending.COMPLETED, rig.begin(Rig.startedByTheTail()).carryOut());
        assertEquals(List.of("approach 1", "soak 1", "record 1", "approach 2", "soak 2", "record 2"), rig.phases());
        RunFact.Recorded first = rig.course().recorded().getFirst();
        assertEquals(
                FakeBench.ROLES.instruments(),
                first.toCome().stream().map(RunFact.ToCome::channel).toList());
        double left = Math.abs(first.toCome().getFirst().value())
                + first.toCome().getFirst().standardUncertainty();
        assertTrue(left <= 0.2 * 0.6, "a fifth of the target uncertainty, was " + left);
        Rules rules = Rules.usual();
        long readings = first.last() - first.first() + 1;
        assertTrue(readings >= rules.leastReadings() && readings <= rules.mostReadings(), readings + " readings");
    }

    @Test
    void a_record_holds_the_plans_number_of_whole_readings() {
        Rig rig = Rig.thatWorks();
        Ending ignored = rig.run();
        RunFact.Recorded first = rig.course().recorded().getFirst();
        assertEquals(Rig.PLAN.rules().mostReadings(), first.last() - first.first() + 1);
    }

    @Test
    void the_intention_is_written_before_the_chamber_is_touched() {
        Rig rig = Rig.thatWorks();
        rig.bench.onRequest = () ->
                assertInstanceOf(RunFact.Asked.class, rig.journal.runFacts().getLast());
        assertEquals(Ending.COMPLETED, rig.run());
    }

    @TestFactory
    Stream<DynamicTest> wherever_the_journal_is_lost_the_chamber_is_left_at_rest() {
        Rig whole = Rig.thatWorks();
        Ending ignored = whole.run();
        List<Fact> truth = whole.journal.facts();
        return IntStream.range(1, truth.size())
                .mapToObj(k -> dynamicTest("append " + (k + 1) + " fails", () -> {
                    Rig rig = Rig.losingTheJournalAt(k);
                    assertThrows(JournalLost.class, rig::run);
                    assertTrue(rig.bench.isAtRest());
                    assertEquals(truth.subList(0, k), rig.journal.facts());
                }));
    }

    @Test
    void a_run_whose_first_fact_cannot_be_written_touches_nothing() {
        Rig rig = Rig.losingTheJournalAt(0);
        assertThrows(JournalLost.class, rig::run);
        assertEquals(List.of(), rig.bench.calls);
    }

    @Test
    void the_soak_starts_again_when_settling_is_lost() {
        Rig rig = Rig.thatWorks();
        whenFirst(rig, fact -> fact instanceof RunFact.Entered e && e.phase() == Phase.SOAK, rig.bench::disturb);
        assertEquals(Ending.COMPLETED, rig.run());
        assertEquals(
                List.of("approach 1", "soak 1", "approach 1", "approach 1", "soak 1", "record 1"),
                rig.phases().subList(0, 6),
                "approached again for the disturbance, and once more when it was over");
    }

    @Test
    void readings_of_a_record_that_was_disturbed_are_not_used() {
        Rig rig = Rig.thatWorks();
        whenFirst(rig, fact -> fact instanceof RunFact.Entered e && e.phase() == Phase.RECORD, rig.bench::disturb);
        assertEquals(Ending.COMPLETED, rig.run());
        int disturbed =
                1 + numberOf(rig, f -> f instanceof RunFact.Entered e && e.why().contains("not used"));
        assertTrue(rig.course().recorded().getFirst().first() > disturbed, "the record began after the disturbance");
    }

    @Test
    void a_silent_instrument_holds_the_run_for_a_person_and_says_which() {
        Rig rig = Rig.thatWorks();
        rig.bench.probeSilent = true;
        Run run = rig.begin();
        stopWhenHeld(rig, run);
        assertEquals(Ending.STOPPED, run.carryOut());
        RunFact.Entered held = entered(rig, Phase.HELD);
        assertTrue(held.why().contains("P-1/relative_humidity"), held.why());
        assertTrue(held.why().contains("no reply within 1000 ms"), held.why());
    }

    @Test
    void a_refused_target_holds_the_run_with_the_chambers_reason() {
        Rig rig = Rig.thatWorks();
        rig.bench.refusing = true;
        Run run = rig.begin();
        run.order(Order.STOP, "Ada", "");
        assertEquals(Ending.STOPPED, run.carryOut());
        assertTrue(entered(rig, Phase.HELD).why().contains("out of limits"));
    }

    @Test
    void a_held_run_goes_on_from_the_approach_of_the_same_point() {
        Rig rig = Rig.thatWorks();
        Run run = rig.begin();
        run.order(Order.HOLD, "Ada", "coffee");
        run.order(Order.RESUME, "Ada", "");
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertEquals(
                List.of("approach 1", "held 1", "approach 1", "soak 1"),
                rig.phases().subList(0, 4));
        assertEquals("held by Ada: coffee", entered(rig, Phase.HELD).why());
    }

    @Test
    void a_skipped_point_is_left_out_and_stays_out() {
        Rig rig = Rig.thatWorks();
        Run run = rig.begin();
        run.order(Order.SKIP, "Ada", "not needed");
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertEquals(List.of(2), pointsDone(rig));
        assertEquals(List.of(1), rig.course().skipped());
    }

    @Test
    void a_run_that_was_given_up_cannot_be_taken_up_again() {
        Rig rig = Rig.thatWorks();
        Run run = rig.begin();
        run.order(Order.ABANDON, "Ada", "wrong instruments");
        assertEquals(Ending.ABANDONED, run.carryOut());
        assertThrows(
                IllegalStateException.class,
                () -> Run.resume(rig.journal, Rig.STREAM, "Ada", rig.bench.bench(), rig.time)
                        .carryOut());
    }

    @Test
    void a_run_that_was_cut_off_is_closed_with_the_chamber_at_rest_and_can_be_taken_up() {
        Rig whole = Rig.thatWorks();
        Ending ignored = whole.run();
        int afterFirstPoint = numberOf(whole, f -> f instanceof RunFact.Recorded r && r.point() == 1) + 5;
        Rig rig = Rig.thatWorks();
        for (Fact fact : whole.journal.facts().subList(0, afterFirstPoint)) {
            rig.journal.append(Rig.STREAM, fact);
        }
        assertTrue(Run.closeIfCutOff(rig.journal, Rig.STREAM, rig.bench.bench(), rig.time));
        assertEquals(List.of("rest"), rig.bench.calls);
        assertEquals(Phase.SAFE_STOP, rig.course().phase());
        assertFalse(Run.closeIfCutOff(rig.journal, Rig.STREAM, rig.bench.bench(), rig.time));

        Run again = Run.resume(rig.journal, Rig.STREAM, "Ada", rig.bench.bench(), rig.time);
        assertEquals(Ending.COMPLETED, again.carryOut());
        assertEquals(List.of(1, 2), pointsDone(rig));
        assertEquals(1, rig.phases().stream().filter("record 1"::equals).count());
    }

    @Test
    void a_point_that_does_not_settle_in_time_is_held_and_the_hindrance_named() {
        Rig rig = Rig.thatWorks();
        Run run = rig.begin();
        Instant began = rig.time.instant();
        eachPoll(rig, () -> {
            rig.bench.disturb(rig.time.instant().getEpochSecond() / 10 % 2 == 0 ? 3 : -3);
        });
        stopWhenHeld(rig, run);
        assertEquals(Ending.STOPPED, run.carryOut());
        assertTrue(Duration.between(began, rig.time.instant()).compareTo(Duration.ofHours(1)) > 0);
        assertTrue(
                entered(rig, Phase.HELD).why().contains("not settled after"),
                entered(rig, Phase.HELD).why());
    }

    private static List<Integer> pointsDone(Rig rig) {
        return rig.course().recorded().stream().map(RunFact.Recorded::point).toList();
    }

    private static int numberOf(Rig rig, Predicate<RunFact> wanted) {
        List<RunFact> facts = rig.journal.runFacts();
        return 1
                + IntStream.range(0, facts.size())
                        .filter(i -> wanted.test(facts.get(i)))
                        .findFirst()
                        .orElseThrow();
    }

    private static RunFact.Entered entered(Rig rig, Phase phase) {
        return rig.journal.runFacts().stream()
                .filter(RunFact.Entered.class::isInstance)
                .map(RunFact.Entered.class::cast)
                .filter(e -> e.phase() == phase)
                .findFirst()
                .orElseThrow();
    }

    private static void whenFirst(Rig rig, Predicate<RunFact> wanted, Runnable then) {
        boolean[] done = {false};
        rig.journal.onAppend = fact -> {
            if (!done[0] && wanted.test(fact)) {
                done[0] = true;
                then.run();
            }
        };
    }

    private static void eachPoll(Rig rig, Runnable then) {
        rig.journal.onAppend = fact -> {
            if (fact instanceof RunFact.Observed) {
                then.run();
            }
        };
    }

    private static void stopWhenHeld(Rig rig, Run run) {
        var before = rig.journal.onAppend;
        rig.journal.onAppend = fact -> {
            before.accept(fact);
            if (fact instanceof RunFact.Entered e && e.phase() == Phase.HELD) {
                run.order(Order.STOP, "Ada", "");
            }
        };
    }
}
