// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import isohume.device.Setpoint;
import isohume.quantity.Direction;
import isohume.quantity.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Puts points into the order that takes least time: the shortest of all up to fourteen free points and for longer plans
 * that are mostly given their order, otherwise a good one with a bound on how much shorter any could be. No chance and no
 * clock: the same question has the same answer.
 */
public final class Sequencer {
    private static final int MOST_POINTS = 200;

    private final TimeModel times;
    private final Constraints constraints;

    public Sequencer(TimeModel times, Constraints constraints) {
        this.times = times;
        this.constraints = constraints;
    }

    /**
     * The order that takes least.
     *
     * @param start where the chamber is before the first point
     * @throws IllegalArgumentException if there is no point or there are more than 200
     */
    public Sequence shortest(List<Stop> stops, Setpoint start) {
        if (stops.isEmpty() || stops.size() > MOST_POINTS) {
            throw new IllegalArgumentException(
                    "1 to " + MOST_POINTS + " points can be put in order, were " + stops.size());
        }
        Precedence precedence = new Precedence(stops, constraints);
        Costs costs = Costs.of(stops, start, times, precedence);
        Optional<int[]> exact = new ExactOrder(costs, precedence).order();
        if (exact.isPresent()) {
            return sequence(stops, start, exact.get(), costs.of(exact.get()), true);
        }
        int[] good = good(stops, costs, precedence);
        return sequence(stops, start, good, new LowerBound(costs).minutes(costs.of(good)), false);
    }

    /** The order as it is, with what it takes. */
    public Sequence given(List<Stop> stops, Setpoint start) {
        int[] order = IntStream.range(0, stops.size()).toArray();
        return sequence(stops, start, order, 0, false);
    }

    private static int[] good(List<Stop> stops, Costs costs, Precedence precedence) {
        LocalSearch search = new LocalSearch(costs, precedence);
        List<int[]> starts = new ArrayList<>(List.of(search.nearest(), byTemperature(stops)));
        starts.add(IntStream.range(0, stops.size()).toArray());
        return starts.stream()
                .map(search::settled)
                .filter(precedence::keeps)
                .min(Comparator.comparingDouble(costs::of))
                .map(search::improve)
                .orElseThrow(() -> new IllegalStateException("no order keeps to the constraints"));
    }

    /** Temperature outermost. */
    private static int[] byTemperature(List<Stop> stops) {
        return stops.stream()
                .sorted(Comparator.comparing((Stop s) -> s.point().temperature())
                        .thenComparingInt(s -> s.falling() ? 1 : 0)
                        .thenComparingDouble(s -> s.falling() ? -s.percent() : s.percent()))
                .mapToInt(stops::indexOf)
                .toArray();
    }

    private Sequence sequence(List<Stop> stops, Setpoint start, int[] order, double bound, boolean exact) {
        List<Visit> visits = new ArrayList<>();
        List<Point> points = new ArrayList<>();
        List<Integer> were = new ArrayList<>();
        Setpoint here = start;
        for (int place = 0; place < order.length; place++) {
            Stop stop = stops.get(order[place]);
            visits.add(new Visit(here, stop.condition()));
            here = stop.condition();
            were.add(stop.point().number());
            points.add(new Point(
                    place + 1, stop.point().temperature(), stop.point().humidity(), direction(stops, order, place)));
        }
        Optional<String> broken = new Precedence(stops, constraints).broken(order);
        return new Sequence(points, were, times.whole(visits), bound, exact, broken);
    }

    /** A free point has the direction in which it is approached; the first at a temperature goes the way that goes on. */
    private static Direction direction(List<Stop> stops, int[] order, int place) {
        Stop here = stops.get(order[place]);
        if (here.directed()) {
            return here.point().direction();
        }
        boolean first = place == 0 || !stops.get(order[place - 1]).sameTemperature(here);
        int from = first ? place : place - 1;
        int to = Math.min(from + 1, order.length - 1);
        if (!stops.get(order[to]).sameTemperature(here)) {
            return Direction.ASCENDING;
        }
        return stops.get(order[to]).percent() < stops.get(order[from]).percent()
                ? Direction.DESCENDING
                : Direction.ASCENDING;
    }
}
