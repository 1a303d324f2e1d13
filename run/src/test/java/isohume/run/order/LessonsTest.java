// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import isohume.device.Setpoint;
import isohume.moistair.Formulation;
import isohume.quantity.Direction;
import isohume.quantity.Point;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.Order;
import isohume.run.Phase;
import isohume.run.Plan;
import isohume.run.Roles;
import isohume.run.Rules;
import isohume.run.RunFact;
import isohume.run.reach.WayPoint.Aim;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class LessonsTest {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    private static final Setpoint DRY = at(20);
    private static final Setpoint WET = at(60);
    private final Lessons lessons = new Lessons();

    LessonsTest() {
        Plan plan = new Plan("Three", List.of(point(1, 20), point(2, 60), point(3, 20)), Rules.usual());
        Roles roles = new Roles("m/d", "m/p", "t/t", "t/p", "t/m", List.of());
        take(0, new RunFact.Started(plan, "a bench", roles, Formulation.SONNTAG_1990, "Ada", "test", ""));
    }

    @Test
    void a_point_teaches_from_asking_to_settled_and_from_there_to_recorded() {
        whole(0, 1, DRY);
        take(40, new RunFact.Asked(2, WET));
        take(52, new RunFact.Entered(Phase.SOAK, 2, "settled"));
        take(62, new RunFact.Entered(Phase.RECORD, 2, "soaked"));
        take(67, new RunFact.Recorded(2, 1, 2));
        assertEquals(List.of(new Lesson(new Visit(DRY, WET), 12, 15, Rules.usual())), lessons.learned());
    }

    @Test
    void a_way_point_is_part_of_the_approach() {
        whole(0, 1, DRY);
        take(40, new RunFact.Detoured(2, DRY, Aim.DRYING));
        take(45, new RunFact.Asked(2, WET));
        take(52, new RunFact.Entered(Phase.SOAK, 2, "settled"));
        take(67, new RunFact.Recorded(2, 1, 2));
        assertEquals(12, lessons.learned().getFirst().approach(), 0);
    }

    @Test
    void settling_that_was_lost_is_part_of_the_stay() {
        whole(0, 1, DRY);
        take(40, new RunFact.Asked(2, WET));
        take(50, new RunFact.Entered(Phase.SOAK, 2, "settled"));
        take(55, new RunFact.Entered(Phase.APPROACH, 2, "settling lost"));
        take(65, new RunFact.Entered(Phase.SOAK, 2, "settled"));
        take(80, new RunFact.Recorded(2, 1, 2));
        assertEquals(List.of(new Lesson(new Visit(DRY, WET), 10, 30, Rules.usual())), lessons.learned());
    }

    @Test
    void the_first_point_and_one_after_a_hold_teach_nothing() {
        whole(0, 1, DRY);
        assertEquals(List.of(), lessons.learned());
        take(40, new RunFact.Asked(2, WET));
        take(41, new RunFact.Ordered(Order.HOLD, "Ada", "lunch"));
        take(41, new RunFact.Entered(Phase.HELD, 2, "held by Ada"));
        take(90, new RunFact.Asked(2, WET));
        take(95, new RunFact.Entered(Phase.SOAK, 2, "settled"));
        take(110, new RunFact.Recorded(2, 1, 2));
        assertEquals(List.of(), lessons.learned());
        whole(120, 3, DRY);
        assertEquals(new Visit(WET, DRY), lessons.learned().getFirst().visit());
    }

    private void whole(int from, int number, Setpoint target) {
        take(from, new RunFact.Asked(number, target));
        take(from + 10, new RunFact.Entered(Phase.SOAK, number, "settled"));
        take(from + 30, new RunFact.Recorded(number, 1, 2));
    }

    private void take(int minute, RunFact fact) {
        lessons.take(START.plusSeconds(60L * minute), fact);
    }

    private static Point point(int number, double percent) {
        return new Point(number, Temperature.ofCelsius(23), RelativeHumidity.ofPercent(percent), Direction.ASCENDING);
    }

    private static Setpoint at(double percent) {
        return new Setpoint(Temperature.ofCelsius(23), RelativeHumidity.ofPercent(percent));
    }
}
