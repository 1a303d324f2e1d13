// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import isohume.quantity.Point;
import java.util.List;
import java.util.Optional;

/**
 * Points in an order.
 *
 * @param points numbered in this order, with the direction in which each is approached
 * @param were the number that each had before, in this order
 * @param expected for all of it
 * @param bound no order that keeps to the constraints takes less, min
 * @param exact whether it is the shortest of all
 * @param broken what it breaks of the constraints, in words; empty when it keeps to them
 */
public record Sequence(
        List<Point> points,
        List<Integer> were,
        Expected expected,
        double bound,
        boolean exact,
        Optional<String> broken) {
    public Sequence {
        points = List.copyOf(points);
        were = List.copyOf(were);
    }

    public boolean kept() {
        return broken.isEmpty();
    }

    /** By how much it may be longer than the shortest, as a share; 0 when it is the shortest. */
    public double gap() {
        return exact ? 0 : 1 - bound / expected.minutes();
    }
}
