// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import isohume.device.Setpoint;
import isohume.quantity.Direction;
import isohume.quantity.Point;
import isohume.run.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A point to be put in order.
 *
 * @param directed whether its direction has to be kept, because hysteresis is asked for or the plan states it
 */
public record Stop(Point point, boolean directed) {
    private static final double SAME_PERCENT = 0.5;

    /**
     * The points of a plan. Hysteresis is asked for at a temperature where a humidity is approached from both sides.
     *
     * @param stated numbers of the points whose direction the plan states
     */
    public static List<Stop> of(Plan plan, Set<Integer> stated) {
        List<Stop> stops = new ArrayList<>();
        for (Point point : plan.points()) {
            stops.add(new Stop(point, stated.contains(point.number()) || hysteresis(point, plan.points())));
        }
        return stops;
    }

    private static boolean hysteresis(Point point, List<Point> all) {
        List<Point> here = all.stream()
                .filter(p -> p.temperature().equals(point.temperature()))
                .toList();
        return here.stream()
                .filter(p -> p.direction() == Direction.DESCENDING)
                .anyMatch(down -> here.stream()
                        .filter(p -> p.direction() == Direction.ASCENDING)
                        .anyMatch(up -> Math.abs(up.humidity().percent()
                                        - down.humidity().percent())
                                < SAME_PERCENT));
    }

    Setpoint condition() {
        return new Setpoint(point.temperature(), point.humidity());
    }

    double percent() {
        return point.humidity().percent();
    }

    boolean sameTemperature(Stop other) {
        return point.temperature().equals(other.point.temperature());
    }

    boolean rising() {
        return directed && point.direction() == Direction.ASCENDING;
    }

    boolean falling() {
        return directed && point.direction() == Direction.DESCENDING;
    }
}
