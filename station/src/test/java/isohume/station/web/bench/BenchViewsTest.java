// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.journal.Entry;
import isohume.run.Course;
import isohume.run.Foresight;
import isohume.run.Order;
import isohume.run.Phase;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.run.SeenSoFar;
import isohume.station.web.CutDesk;
import isohume.station.web.InventedDesk;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The bench's view along a whole run that the engine itself carried out on an invented bench. */
class BenchViewsTest {
    private static final Foresight FORESIGHT = new SeenSoFar();
    private static InventedDesk desk = new InventedDesk(new InventedDesk.Jumping());
    private static List<Entry> facts = List.of();

    @BeforeAll
    static void carryOut() {
        desk.carryOut();
        facts = desk.facts(InventedDesk.RUN, 0, Integer.MAX_VALUE);
    }

    @Test
    void a_run_without_facts_has_no_view() {
        assertTrue(BenchViews.of(new Followed("another"), desk).isEmpty());
    }

    @Test
    void a_run_that_has_only_begun_shows_its_plan_and_no_figures() {
        BenchView view = at(1, Duration.ZERO);
        assertEquals(5, view.steps().size());
        assertEquals("", view.read());
        assertTrue(view.figures().stream().allMatch(f -> f.value().toString().equals("–")));
    }

    @Test
    void at_every_fact_the_word_is_the_phase_and_the_orders_fit_it() {
        Followed followed = new Followed(InventedDesk.RUN);
        for (int number = 2; number <= facts.size(); number += 7) {
            BenchView view = BenchViews.of(followed, new CutDesk(desk, number, Duration.ZERO))
                    .orElseThrow();
            assertEquals(view.phase().word(), view.word());
            assertEquals(view.live(), view.orders().contains(Order.STOP), "fact " + number);
            assertFalse(view.orders().contains(Order.HOLD) && view.phase() == Phase.HELD, "fact " + number);
            assertTrue(view.steps().stream().filter(BenchView.Step::now).count() <= 1);
        }
    }

    @Test
    void figures_that_stand_still_while_a_run_is_at_work_are_old_after_three_polls() {
        long observed = first(f -> f instanceof RunFact.Observed);
        assertFalse(at(observed, Duration.ofSeconds(30)).old());
        assertTrue(at(observed, Duration.ofSeconds(31)).old());
    }

    @Test
    void the_last_figures_of_a_finished_run_are_not_old_but_at_the_end() {
        BenchView view = at(facts.size(), Duration.ofDays(1));
        assertFalse(view.old());
        assertFalse(view.live());
        assertEquals("finished", view.word());
        assertTrue(view.steps().stream().allMatch(s -> s.standing() == BenchView.Standing.RECORDED));
    }

    @Test
    void once_a_point_soaks_its_expected_time_is_what_it_took_within_a_factor_of_three() {
        long soaking = first(f -> f instanceof RunFact.Entered e && e.phase() == Phase.SOAK && e.point() == 2);
        long recorded = first(f -> f instanceof RunFact.Recorded r && r.point() == 2);
        Duration took = Duration.between(instant(soaking), instant(recorded));
        Duration expected = thisPoint(soaking);
        double factor = (double) expected.toSeconds() / took.toSeconds();
        assertTrue(factor > 1 / 3.0 && factor < 3, "expected " + expected + ", took " + took);
    }

    @Test
    void a_recording_point_counts_its_readings() {
        long recording = first(f -> f instanceof RunFact.Entered e && e.phase() == Phase.RECORD);
        assertEquals("0 readings, 10 to 30 in all", at(recording, Duration.ZERO).progress());
        assertEquals(
                "3 readings, 10 to 30 in all", at(recording + 3, Duration.ZERO).progress());
    }

    @Test
    void nothing_is_forecast_for_a_run_that_has_ended() {
        CutDesk cut = new CutDesk(desk, facts.size(), Duration.ZERO);
        Course course = new Followed(InventedDesk.RUN).look(cut, Followed::course);
        assertTrue(FORESIGHT.ofThisPoint(course, cut.clock().instant()).isEmpty());
        assertTrue(FORESIGHT.ofRun(course, cut.clock().instant()).isEmpty());
    }

    private static BenchView at(long number, Duration later) {
        return BenchViews.of(new Followed(InventedDesk.RUN), new CutDesk(desk, number, later))
                .orElseThrow();
    }

    private static Duration thisPoint(long number) {
        CutDesk cut = new CutDesk(desk, number, Duration.ZERO);
        Course course = new Followed(InventedDesk.RUN).look(cut, Followed::course);
        return FORESIGHT
                .ofThisPoint(course, cut.clock().instant())
                .orElseThrow()
                .expected();
    }

    private static Instant instant(long number) {
        return facts.get((int) number - 1).at();
    }

    private static long first(Predicate<RunFact> wanted) {
        return facts.stream()
                .filter(e -> wanted.test(RunNotation.decode(e.fact())))
                .findFirst()
                .orElseThrow()
                .number();
    }
}
