// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.quantity.Point;
import java.util.List;

/** Ordered points with rules. Points are numbered 1, 2, 3 … in the order in which they are visited. */
public record Plan(String title, List<Point> points, Rules rules) {
    public Plan {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a plan needs at least one point");
        }
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).number() != i + 1) {
                throw new IllegalArgumentException("points are numbered in their order; at place " + (i + 1) + " stood "
                        + points.get(i).number());
            }
        }
    }

    public Point point(int number) {
        return points.get(number - 1);
    }

    /** Whether the point is the first at its temperature since another one. */
    boolean changesTemperature(int number) {
        return number == 1
                || point(number).temperature().compareTo(point(number - 1).temperature()) != 0;
    }
}
