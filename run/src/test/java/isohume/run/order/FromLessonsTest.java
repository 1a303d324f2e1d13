// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Setpoint;
import isohume.journal.Journal;
import isohume.journal.MemoryJournal;
import isohume.journal.StreamName;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Direction;
import isohume.quantity.Point;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.Course;
import isohume.run.Foresight;
import isohume.run.Phase;
import isohume.run.Plan;
import isohume.run.Roles;
import isohume.run.Rules;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.run.SeenSoFar;
import isohume.run.reach.Flows;
import isohume.run.reach.Reach;
import isohume.run.reach.Streams;
import isohume.run.reach.Surfaces;
import isohume.run.reach.Way;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FromLessonsTest {
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    private static final Rules RULES = Rules.usual();
    private static final Plan PLAN = new Plan(
            "Four points", List.of(point(1, 23, 50), point(2, 23, 70), point(3, 23, 10), point(4, 40, 10)), RULES);

    private static Point point(int number, double celsius, double percent) {
        return new Point(
                number, Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent), Direction.ASCENDING);
    }

    private static LearnedTimes times(List<Lesson> lessons) {
        Streams streams = new Streams(
                DewPoint.overIce(Temperature.ofCelsius(-30)),
                DewPoint.overWater(Temperature.ofCelsius(48)),
                Optional.empty());
        Reach reach = new Reach(
                Temperature.ofCelsius(5),
                Temperature.ofCelsius(50),
                RelativeHumidity.ofPercent(5),
                RelativeHumidity.ofPercent(95),
                streams,
                Surfaces.usual(),
                List.of());
        Way way = new Way(reach, MoistAir.by(Formulation.SONNTAG_1990));
        return new LearnedTimes(Pace.of(Flows.usual()), way, RULES, lessons);
    }

    private static List<Lesson> lessons(int to, double minutes) {
        Visit visit = new Visit(condition(PLAN.point(to - 1)), condition(PLAN.point(to)));
        return Collections.nCopies(30, new Lesson(visit, minutes, 2, RULES));
    }

    private static Setpoint condition(Point point) {
        return new Setpoint(point.temperature(), point.humidity());
    }

    /** A run that has just been told to go to its first point. */
    private static Course begun() {
        Roles roles = new Roles("m/dew_point", "m/deposit", "t/temperature", "t/p", "t/q", List.of("P-1/temperature"));
        Course course = new Course();
        Journal journal = new MemoryJournal(() -> NOW);
        List<RunFact> facts = List.of(
                new RunFact.Started(PLAN, "a bench", roles, Formulation.SONNTAG_1990, "Ada", "test", "no job"),
                new RunFact.Asked(1, condition(PLAN.point(1))),
                new RunFact.Entered(Phase.APPROACH, 1, "asked"));
        for (RunFact fact : facts) {
            course.take(journal.append(new StreamName("run", "R-1"), RunNotation.encode(fact)), fact);
        }
        return course;
    }

    @Test
    void a_point_takes_what_such_points_took_on_this_bench() {
        List<Lesson> known = new ArrayList<>(lessons(2, 8));
        known.addAll(lessons(3, 60));
        Foresight foresight = new FromLessons(times(known));
        double quick = minutes(foresight.ofPoint(begun(), 2).expected());
        double dry = minutes(foresight.ofPoint(begun(), 3).expected());
        assertEquals(10, quick, 2); // 8 and 2 were taught
        assertEquals(62, dry, 8);
    }

    @Test
    void a_bench_that_has_taught_nothing_is_foreseen_as_before() {
        Foresight foresight = new FromLessons(times(List.of()));
        assertEquals(new SeenSoFar().ofRun(begun(), NOW), foresight.ofRun(begun(), NOW));
    }

    @Test
    void what_is_not_known_of_a_bench_does_not_average_out_over_its_points() {
        Foresight foresight = new FromLessons(times(lessons(2, 8)));
        Course course = begun();
        Foresight.Length both = foresight.ofPoints(course, List.of(3, 4));
        Foresight.Length apart = foresight.ofPoint(course, 3).plus(foresight.ofPoint(course, 4));
        assertEquals(minutes(apart.expected()), minutes(both.expected()), 0.1);
        assertTrue(both.spread().compareTo(apart.spread()) > 0, both + " and " + apart);
    }

    private static double minutes(Duration duration) {
        return duration.toMillis() / 60_000.0;
    }
}
