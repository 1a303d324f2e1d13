// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.journal.Fact;
import isohume.moistair.Formulation;
import isohume.run.entry.Appraisal;
import isohume.run.entry.DisplayEntry;
import isohume.run.entry.DisplayedChannel;
import isohume.run.entry.Word;
import isohume.run.watch.Fault;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Runs with a handheld of which a person types what it shows. */
class DisplaysTest {
    private static final String ID = "H-1/relative_humidity";
    private static final int ENTRIES = 3;
    private static final DisplayedChannel HANDHELD =
            new DisplayedChannel(ID, new BigDecimal("0.1"), Duration.ofSeconds(2), ENTRIES, 2, 0);
    private static final String SHOWN_AT_50 = "50.4";
    private static final String SHOWN_AT_30 = "30.2";

    private Rig rig = Rig.thatWorks();

    private static RunFact.Started started(Plan plan) {
        return new RunFact.Started(
                plan,
                "a fake bench",
                FakeBench.ROLES,
                Formulation.SONNTAG_1990,
                "Ada",
                "test",
                "no job",
                Targets.none(),
                List.of(HANDHELD));
    }

    private Word.Shown shown(String text) {
        return new Word.Shown(ID, text, rig.time.instant(), "Ada");
    }

    /** At every poll of the grid while the handheld is wanted. */
    private void whenWanted(Consumer<Course> act) {
        Course course = new Course();
        Instant[] last = {Instant.MIN};
        long[] seen = {0};
        rig.journal.onAppend = fact -> {
            rig.journal.read(Rig.STREAM, seen[0], Integer.MAX_VALUE).forEach(course::take);
            seen[0] = course.taken();
            boolean wanted = course.phase() == Phase.RECORD
                    && !course.entries().wanted(course.point()).isEmpty();
            if (fact instanceof RunFact.Observed && wanted && last[0].isBefore(rig.time.instant())) {
                last[0] = rig.time.instant();
                act.accept(course);
            }
        };
    }

    private String right(Course course) {
        return course.point() == 1 ? SHOWN_AT_50 : SHOWN_AT_30;
    }

    private <F extends RunFact> List<F> facts(Class<F> kind) {
        return rig.journal.runFacts().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void a_point_is_whole_once_the_display_was_read_and_every_entry_is_paired_with_a_poll_of_its_instant_or_after() {
        Run run = rig.begin(started(Rig.PLAN));
        whenWanted(course -> run.say(shown(right(course))));
        assertEquals(Ending.COMPLETED, run.carryOut());
        List<RunFact.Typed> typed = facts(RunFact.Typed.class);
        assertEquals(
                List.of(1, 1, 1, 2, 2, 2),
                typed.stream().map(RunFact.Typed::point).toList());
        List<RunFact> all = rig.journal.runFacts();
        for (RunFact.Typed one : typed) {
            RunFact.Observed paired = (RunFact.Observed) all.get((int) one.observed() - 1);
            assertFalse(paired.at().isBefore(one.at()), one + " beside " + paired.at());
        }
        for (RunFact.Recorded record : rig.course().recorded()) {
            long within = typed.stream()
                    .filter(t -> t.observed() >= record.first() && t.observed() <= record.last())
                    .count();
            assertEquals(ENTRIES, within, "entries among the readings of point " + record.point());
        }
    }

    @Test
    void the_run_writes_down_at_each_record_that_a_person_is_asked() {
        Run run = rig.begin(started(Rig.PLAN));
        whenWanted(course -> run.say(shown(right(course))));
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertEquals(
                List.of(new RunFact.Wanted(1, List.of(ID)), new RunFact.Wanted(2, List.of(ID))),
                facts(RunFact.Wanted.class));
    }

    @Test
    void the_reading_stands_beside_its_observation_in_the_instruments_unit() {
        Run run = rig.begin(started(Rig.PLAN));
        whenWanted(course -> run.say(shown(right(course))));
        assertEquals(Ending.COMPLETED, run.carryOut());
        long observed = facts(RunFact.Typed.class).getFirst().observed();
        assertEquals(50.4, rig.course().entries().besides(observed).get(ID));
    }

    @Test
    void it_works_as_well_where_points_are_judged_by_what_is_still_to_come() {
        Run run = rig.begin(started(new Plan(Rig.PLAN.title(), Rig.PLAN.points(), Rules.usual())));
        whenWanted(course -> run.say(shown(right(course))));
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertEquals(2 * ENTRIES, facts(RunFact.Typed.class).size());
    }

    /** The set points are 50 % RH and 30 % RH; 0.4 % of 20 % RH come late, and of the first step nothing is left. */
    @Test
    void what_may_come_late_of_a_display_is_written_with_the_record() {
        Run run = rig.begin(started(Rig.PLAN));
        whenWanted(course -> run.say(shown(right(course))));
        assertEquals(Ending.COMPLETED, run.carryOut());
        List<RunFact.Recorded> records = rig.course().recorded();
        assertEquals(new RunFact.ToCome(ID, 0, 0), records.getFirst().toCome().getFirst());
        assertEquals(0.08, records.getLast().toCome().getFirst().standardUncertainty(), 1e-6);
    }

    @Test
    void nobody_who_reads_holds_the_run_after_the_longest_time_and_loses_nothing() {
        Run run = rig.begin(started(Rig.PLAN));
        stopWhenHeld(run);
        assertEquals(Ending.STOPPED, run.carryOut());
        RunFact.Noticed unread = facts(RunFact.Noticed.class).getFirst();
        assertEquals(Fault.UNREAD, unread.fault());
        assertEquals(ID, unread.channel());
        RunFact.Entered record = entered(Phase.RECORD);
        assertEquals("record 1", record.phase().word() + " " + record.point());
        assertTrue(entered(Phase.HELD).why().contains(ID), entered(Phase.HELD).why());
        assertEquals(List.of(), rig.course().recorded());
    }

    @Test
    void a_run_that_was_held_for_a_reading_asks_again_when_it_is_resumed() {
        Run run = rig.begin(started(Rig.PLAN));
        boolean[] away = {true};
        whenWanted(course -> {
            if (!away[0]) {
                run.say(shown(right(course)));
            }
        });
        var before = rig.journal.onAppend;
        rig.journal.onAppend = fact -> {
            before.accept(fact);
            if (fact instanceof RunFact.Entered e && e.phase() == Phase.HELD) {
                away[0] = false;
                run.order(Order.RESUME, "Ada", "here I am");
            }
        };
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertEquals(2, rig.course().recorded().size());
    }

    @Test
    void a_display_that_is_left_out_at_a_point_is_waited_for_at_the_next() {
        Run run = rig.begin(started(Rig.PLAN));
        whenWanted(course ->
                run.say(course.point() == 1 ? new Word.Omitted(ID, "Ada", "it is off") : shown(right(course))));
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertEquals(List.of(new RunFact.LeftOut(1, ID, "Ada", "it is off")), facts(RunFact.LeftOut.class));
        assertEquals(
                List.of(2, 2, 2),
                facts(RunFact.Typed.class).stream().map(RunFact.Typed::point).toList());
        assertEquals(2, rig.course().recorded().size());
    }

    @Test
    void a_display_is_left_out_for_a_reason_only() {
        Run run = rig.begin(started(Rig.PLAN));
        List<Appraisal> said = new ArrayList<>();
        whenWanted(course -> {
            said.add(new Entering(course).appraise(new Word.Omitted(ID, "Ada", " ")));
            run.say(shown(right(course)));
        });
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertEquals(new Appraisal.Refused("Write down why it is left out."), said.getFirst());
    }

    @Test
    void an_entry_that_is_taken_back_stays_on_the_record_and_another_is_asked_for() {
        Run run = rig.begin(started(Rig.PLAN));
        boolean[] done = {false};
        whenWanted(course -> {
            List<DisplayEntry> entries = course.entries().of(HANDHELD);
            if (!done[0] && !entries.isEmpty()) {
                done[0] = true;
                run.say(new Word.Mistaken(entries.getFirst().number(), "Ada", "misread"));
            } else {
                run.say(shown(right(course)));
            }
        });
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertEquals(ENTRIES + 1, typedAt(1));
        RunFact.TakenBack back = facts(RunFact.TakenBack.class).getFirst();
        RunFact original = rig.journal.runFacts().get((int) back.entry() - 1);
        assertEquals(SHOWN_AT_50, ((RunFact.Typed) original).shown());
        long observed = ((RunFact.Typed) original).observed();
        assertTrue(rig.course().entries().besides(observed).isEmpty(), "it is not used");
    }

    private long typedAt(int point) {
        return facts(RunFact.Typed.class).stream()
                .filter(t -> t.point() == point)
                .count();
    }

    @Test
    void there_is_time_to_take_back_the_last_entry_before_the_run_goes_on() {
        Run run = rig.begin(started(Rig.PLAN));
        whenWanted(course -> run.say(shown(right(course))));
        assertEquals(Ending.COMPLETED, run.carryOut());
        Instant last = facts(RunFact.Typed.class).get(ENTRIES - 1).at();
        long recorded = rig.journal.read(Rig.STREAM, 0, Integer.MAX_VALUE).stream()
                .filter(e -> RunNotation.decode(e.fact()) instanceof RunFact.Recorded)
                .findFirst()
                .orElseThrow()
                .at()
                .getEpochSecond();
        assertTrue(
                recorded - last.getEpochSecond() >= 10, "went on after " + (recorded - last.getEpochSecond()) + " s");
    }

    @Test
    void what_is_typed_while_nothing_is_asked_is_declined_in_writing() {
        Run run = rig.begin(started(Rig.PLAN));
        run.say(shown(SHOWN_AT_50));
        whenWanted(course -> run.say(shown(right(course))));
        assertEquals(Ending.COMPLETED, run.carryOut());
        RunFact.Declined declined = facts(RunFact.Declined.class).getFirst();
        assertTrue(declined.why().contains("in approach"), declined.why());
    }

    /** One poll without the probe is no fault, and no row of a record either. */
    @Test
    void an_entry_beside_a_poll_that_is_not_whole_is_declined_and_asked_for_again() {
        Run run = rig.begin(started(Rig.PLAN));
        boolean[] once = {false};
        whenWanted(course -> {
            Instant readAt = rig.time.instant();
            if (!once[0]) { // the display is read a moment after the poll, so that another poll is made for it
                once[0] = true;
                rig.bench.probeSilent = true;
                readAt = readAt.plusMillis(1);
            }
            run.say(new Word.Shown(ID, right(course), readAt, "Ada"));
        });
        var before = rig.journal.onAppend;
        rig.journal.onAppend = fact -> {
            before.accept(fact);
            rig.bench.probeSilent &= !(fact instanceof RunFact.Declined);
        };
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertTrue(facts(RunFact.Declined.class).getFirst().why().contains("gave no reading"));
        assertEquals(2 * ENTRIES, facts(RunFact.Typed.class).size());
    }

    @Test
    void what_is_odd_is_taken_only_with_a_persons_word_that_is_written_down() {
        Run run = rig.begin(started(Rig.PLAN));
        whenWanted(course -> {
            Word.Shown odd = shown("60.9");
            boolean first = facts(RunFact.Declined.class).isEmpty();
            run.say(course.point() == 2 ? shown(SHOWN_AT_30) : first ? odd : odd.thatStands());
        });
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertTrue(facts(RunFact.Declined.class).getFirst().why().contains("from the reference"));
        RunFact.Typed taken = facts(RunFact.Typed.class).getFirst();
        assertEquals("60.9", taken.shown());
        assertTrue(taken.remark().startsWith("confirmed when asked: 60.9 lies 10.9"), taken.remark());
    }

    @Test
    void a_corrected_figure_tells_what_was_typed_at_first() {
        Run run = rig.begin(started(Rig.PLAN));
        whenWanted(course -> run.say(new Word.Shown(
                ID, right(course), rig.time.instant(), "Ada", false, "05.4", java.util.Optional.empty())));
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertEquals(
                "05.4 was typed at first; corrected when asked",
                facts(RunFact.Typed.class).getFirst().remark());
    }

    @Test
    void entries_of_a_record_that_was_disturbed_are_kept_and_not_used() {
        Run run = rig.begin(started(Rig.PLAN));
        boolean[] done = {false};
        whenWanted(course -> {
            run.say(shown(right(course)));
            if (!done[0] && course.entries().standing(HANDHELD) == 1) {
                done[0] = true;
                rig.bench.disturb();
            }
        });
        assertEquals(Ending.COMPLETED, run.carryOut());
        assertTrue(typedAt(1) > ENTRIES, typedAt(1) + " entries at point 1");
        RunFact.Recorded first = rig.course().recorded().getFirst();
        List<Long> observed = facts(RunFact.Typed.class).stream()
                .filter(t -> t.point() == 1)
                .map(RunFact.Typed::observed)
                .toList();
        assertTrue(observed.getFirst() < first.first(), "the first belongs to the record that was broken off");
        assertEquals(
                ENTRIES,
                observed.stream()
                        .filter(n -> n >= first.first() && n <= first.last())
                        .count());
    }

    @Test
    void a_run_that_is_cut_off_between_entries_keeps_them_and_takes_the_point_anew() {
        Run whole = rig.begin(started(Rig.PLAN));
        whenWanted(course -> whole.say(shown(right(course))));
        assertEquals(Ending.COMPLETED, whole.carryOut());
        List<Fact> facts = rig.journal.facts();
        int second = (int) facts.stream().takeWhile(f -> f.form() != 51).count() + 1;

        rig = Rig.thatWorks();
        facts.subList(0, second).forEach(fact -> rig.journal.append(Rig.STREAM, fact));
        assertTrue(Run.closeIfCutOff(rig.journal, Rig.STREAM, rig.bench.bench(), rig.time));
        Run again = Run.resume(rig.journal, Rig.STREAM, "Ada", rig.bench.bench(), rig.time);
        whenWanted(course -> again.say(shown(right(course))));
        assertEquals(Ending.COMPLETED, again.carryOut());
        assertEquals(1 + ENTRIES, typedAt(1));
        assertEquals(facts.subList(0, second), rig.journal.facts().subList(0, second));
    }

    private RunFact.Entered entered(Phase phase) {
        return facts(RunFact.Entered.class).stream()
                .filter(e -> e.phase() == phase)
                .findFirst()
                .orElseThrow();
    }

    private void stopWhenHeld(Run run) {
        rig.journal.onAppend = fact -> {
            if (fact instanceof RunFact.Entered e && e.phase() == Phase.HELD) {
                run.order(Order.STOP, "Ada", "");
            }
        };
    }
}
