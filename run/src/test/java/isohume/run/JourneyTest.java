// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.journal.MemoryJournal;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.Point;
import isohume.run.reach.InventedReach;
import isohume.run.reach.Way;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A run on a bench that knows its way. */
class JourneyTest {
    private static final MoistAir AIR = MoistAir.by(Formulation.SONNTAG_1990);
    private static final Way WAY = new Way(InventedReach.usual(), AIR);

    private final FakeTime time = new FakeTime();
    private final FakeBench bench = new FakeBench(time);
    private final MemoryJournal journal = new MemoryJournal(time);

    @Test
    void the_air_is_dried_before_it_is_cooled_and_warmed_before_it_is_humidified() {
        carryOut(plan(Rig.point(1, 40, 75), Rig.point(2, 10, 60)));
        List<String> asked = facts().stream()
                .map(f -> switch (f) {
                    case RunFact.Detoured d -> d.aim() + " " + d.point();
                    case RunFact.Asked a -> "ASKED " + a.point();
                    default -> "";
                })
                .filter(s -> !s.isEmpty())
                .toList();
        assertEquals(List.of("WARMING 1", "ASKED 1", "DRYING 2", "COOLING 2", "ASKED 2"), asked);
    }

    @Test
    void the_air_is_looked_at_before_anything_is_asked_for() {
        carryOut(plan(Rig.point(1, 40, 75)));
        List<RunFact> first = facts().stream()
                .filter(f -> !(f instanceof RunFact.Started) && !(f instanceof RunFact.Guarded))
                .limit(2)
                .toList();
        assertTrue(first.get(0) instanceof RunFact.Observed, first.toString());
        assertTrue(first.get(1) instanceof RunFact.Detoured, first.toString());
    }

    @Test
    void the_page_is_told_what_a_way_point_is_for() {
        carryOut(plan(Rig.point(1, 40, 75), Rig.point(2, 10, 60)));
        assertTrue(facts().stream()
                .anyMatch(f -> f instanceof RunFact.Entered e
                        && e.why().startsWith("on the way to point 2: drying first; the chamber is set to 40.00 °C")));
    }

    @Test
    void nothing_is_recorded_at_a_way_point_and_it_is_not_waited_for_longer_than_needed() {
        carryOut(plan(Rig.point(1, 40, 75), Rig.point(2, 10, 60)));
        boolean onTheWay = false;
        for (RunFact fact : facts()) {
            onTheWay = fact instanceof RunFact.Detoured || (onTheWay && !(fact instanceof RunFact.Asked));
            if (fact instanceof RunFact.Entered entered) {
                assertFalse(onTheWay && entered.phase() != Phase.APPROACH, entered.toString());
            }
        }
        assertEquals(2, course().recorded().size());
    }

    @Test
    void a_bench_that_is_near_enough_goes_straight() {
        carryOut(plan(Rig.point(1, 23, 50), Rig.point(2, 25, 30)));
        assertFalse(facts().stream().anyMatch(RunFact.Detoured.class::isInstance));
    }

    private void carryOut(Plan plan) {
        Bench known = bench.bench().going(WAY);
        RunFact.Started usual = Rig.started();
        RunFact.Started started = new RunFact.Started(
                plan,
                usual.bench(),
                usual.roles(),
                usual.formulation(),
                usual.operator(),
                usual.program(),
                usual.job());
        assertEquals(
                Ending.COMPLETED,
                Run.begin(journal, Rig.STREAM, started, known, time).carryOut());
    }

    private static Plan plan(Point... points) {
        return new Plan("A way", List.of(points), Rig.PLAN.rules());
    }

    private List<RunFact> facts() {
        return journal.read(Rig.STREAM, 0, Integer.MAX_VALUE).stream()
                .map(e -> RunNotation.decode(e.fact()))
                .toList();
    }

    private Course course() {
        Course course = new Course();
        journal.read(Rig.STREAM, 0, Integer.MAX_VALUE).forEach(course::take);
        return course;
    }
}
