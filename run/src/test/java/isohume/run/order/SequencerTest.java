// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Setpoint;
import isohume.quantity.Direction;
import isohume.quantity.Point;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.order.Constraints.Wet;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SequencerTest {
    private static final long SEED = 14;
    private static final Setpoint START = at(23, 45);
    private final Constraints free = Constraints.usual().with(Wet.ANYWHERE);

    /** A tenth of a minute for each per cent, drying dearer, two for each kelvin, and a soak for a new temperature. */
    private static final TimeModel PLAIN = new TimeModel() {
        @Override
        public Expected approach(Visit visit) {
            double step = visit.humidityStep();
            return exactly(5 + (step < 0 ? -0.15 * step : 0.1 * step) + 2 * Math.abs(visit.temperatureStep()));
        }

        @Override
        public Expected stay(Visit visit) {
            return exactly(visit.newTemperature() ? 35 : 15);
        }

        @Override
        public Expected whole(List<Visit> visits) {
            return exactly(visits.stream()
                    .mapToDouble(v -> approach(v).minutes() + stay(v).minutes())
                    .sum());
        }

        private Expected exactly(double minutes) {
            return new Expected(minutes, 0);
        }
    };

    @Test
    void up_to_eight_points_the_order_is_the_best_of_all_permutations() {
        System.out.println("seed " + SEED);
        SplittableRandom random = new SplittableRandom(SEED);
        for (int trial = 0; trial < 12; trial++) {
            List<Stop> stops = scattered(7, random, trial % 2 == 0);
            Constraints constraints = trial % 3 == 0 ? Constraints.usual() : free;
            Sequence found = new Sequencer(PLAIN, constraints).shortest(stops, START);
            assertTrue(found.exact() && found.kept());
            assertEquals(best(stops, constraints), found.expected().minutes(), 1e-9);
        }
    }

    /** Every permutation, with the rules for ascending points written out again. */
    private static double best(List<Stop> stops, Constraints constraints) {
        return permutations(stops).stream()
                .filter(order -> allowed(order, constraints))
                .mapToDouble(SequencerTest::minutes)
                .min()
                .orElseThrow();
    }

    private static boolean allowed(List<Stop> order, Constraints constraints) {
        for (int i = 0; i < order.size(); i++) {
            Stop a = order.get(i);
            for (Stop b : order.subList(i + 1, order.size())) {
                boolean bothRise = a.directed() && b.directed() && sameTemperature(a, b);
                if (bothRise && a.percent() > b.percent()) {
                    return false;
                }
                if (constraints.wet() == Wet.LAST && a.percent() > 80 && b.percent() <= 80) {
                    return false;
                }
            }
            boolean fromAbove = i > 0
                    && sameTemperature(order.get(i - 1), a)
                    && order.get(i - 1).percent() > a.percent();
            if (a.directed() && fromAbove) {
                return false;
            }
        }
        return true;
    }

    private static boolean sameTemperature(Stop a, Stop b) {
        return a.point().temperature().equals(b.point().temperature());
    }

    private static double minutes(List<Stop> order) {
        List<Visit> visits = new ArrayList<>();
        Setpoint here = START;
        for (Stop stop : order) {
            visits.add(new Visit(here, stop.condition()));
            here = stop.condition();
        }
        return PLAIN.whole(visits).minutes();
    }

    private static List<List<Stop>> permutations(List<Stop> of) {
        if (of.isEmpty()) {
            return List.of(List.of());
        }
        List<List<Stop>> all = new ArrayList<>();
        for (Stop first : of) {
            List<Stop> rest = new ArrayList<>(of);
            rest.remove(first);
            for (List<Stop> order : permutations(rest)) {
                List<Stop> whole = new ArrayList<>(List.of(first));
                whole.addAll(order);
                all.add(whole);
            }
        }
        return all;
    }

    @Test
    void fourteen_free_points_are_put_in_order_exactly_within_a_second() {
        List<Stop> stops = scattered(14, new SplittableRandom(SEED), false);
        Sequence unused = new Sequencer(PLAIN, free).shortest(stops, START);
        Sequence found = assertTimeout(Duration.ofSeconds(1), () -> new Sequencer(PLAIN, free).shortest(stops, START));
        assertTrue(found.exact());
        assertEquals(0, found.gap(), 0);
    }

    @Test
    void sixty_free_points_take_less_than_five_seconds_and_have_a_bound() {
        List<Stop> stops = scattered(60, new SplittableRandom(SEED), false);
        Sequence found = assertTimeout(Duration.ofSeconds(5), () -> new Sequencer(PLAIN, free).shortest(stops, START));
        assertFalse(found.exact());
        assertTrue(found.kept());
        assertTrue(found.gap() >= 0 && found.gap() < 0.05, "gap " + found.gap());
        assertEquals(60, found.were().stream().distinct().count());
    }

    @Test
    void the_bound_lies_under_what_the_exact_way_finds_and_not_far() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int trial = 0; trial < 10; trial++) {
            List<Stop> stops = scattered(12, random, trial % 2 == 0);
            Precedence precedence = new Precedence(stops, free);
            Costs costs = Costs.of(stops, START, PLAIN, precedence);
            double shortest = costs.of(new ExactOrder(costs, precedence).order().orElseThrow());
            double bound = new LowerBound(costs).minutes(shortest * 1.1);
            assertTrue(bound <= shortest + 1e-6, bound + " above " + shortest);
            assertTrue(bound > 0.9 * shortest, bound + " for " + shortest);
        }
    }

    @Test
    void the_search_finds_what_the_exact_way_finds() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int trial = 0; trial < 6; trial++) {
            List<Stop> stops = scattered(12, random, trial % 2 == 0);
            Precedence precedence = new Precedence(stops, Constraints.usual());
            Costs costs = Costs.of(stops, START, PLAIN, precedence);
            int[] exact = new ExactOrder(costs, precedence).order().orElseThrow();
            LocalSearch search = new LocalSearch(costs, precedence);
            int[] found = search.improve(search.nearest());
            assertTrue(precedence.keeps(found));
            assertTrue(costs.of(found) <= 1.02 * costs.of(exact), costs.of(found) + " for " + costs.of(exact));
        }
    }

    @Test
    void a_long_plan_that_is_mostly_given_its_order_is_solved_exactly() {
        List<Stop> stops = new ArrayList<>();
        for (double celsius : new double[] {10, 23, 40, 50}) {
            for (double percent : new double[] {10, 20, 30, 40, 50, 60, 70, 80}) {
                stops.add(stop(stops.size() + 1, celsius, percent, Direction.ASCENDING, true));
            }
            for (double percent : new double[] {70, 60, 50, 40, 30, 20, 10}) {
                stops.add(stop(stops.size() + 1, celsius, percent, Direction.DESCENDING, true));
            }
        }
        assertTrue(new Sequencer(PLAIN, free).shortest(stops, START).exact());
    }

    @Test
    void a_loop_of_hysteresis_goes_up_and_then_down_at_its_temperature() {
        List<Stop> stops = List.of(
                stop(1, 23, 20, Direction.DESCENDING, true),
                stop(2, 23, 75, Direction.ASCENDING, true),
                stop(3, 40, 50, Direction.ASCENDING, false),
                stop(4, 23, 20, Direction.ASCENDING, true),
                stop(5, 23, 50, Direction.DESCENDING, true));
        List<Integer> were = new Sequencer(PLAIN, free).shortest(stops, START).were();
        assertEquals(List.of(4, 2, 5, 1), were.stream().filter(n -> n != 3).toList());
        assertTrue(were.indexOf(5) == were.indexOf(2) + 1, "the way down begins at the top: " + were);
    }

    @Test
    void no_wet_point_comes_before_a_dry_one_unless_the_constraints_say_so() {
        List<Stop> stops = List.of(
                stop(1, 23, 90, Direction.ASCENDING, false),
                stop(2, 23, 20, Direction.ASCENDING, false),
                stop(3, 40, 90, Direction.ASCENDING, false),
                stop(4, 40, 20, Direction.ASCENDING, false));
        Sequencer usual = new Sequencer(PLAIN, Constraints.usual());
        List<Integer> last = usual.shortest(stops, START).were();
        assertEquals(List.of(2, 4), last.subList(0, 2).stream().sorted().toList());
        assertFalse(usual.given(stops, START).kept());
        List<Integer> there = new Sequencer(PLAIN, Constraints.usual().with(Wet.LAST_AT_TEMPERATURE))
                .shortest(stops, START)
                .were();
        assertEquals(List.of(2, 1, 4, 3), there);
    }

    @Test
    void the_same_question_has_the_same_answer() {
        List<Stop> stops = scattered(40, new SplittableRandom(SEED), true);
        Sequencer sequencer = new Sequencer(PLAIN, Constraints.usual());
        assertEquals(sequencer.shortest(stops, START), sequencer.shortest(stops, START));
    }

    private static List<Stop> scattered(int n, SplittableRandom random, boolean directed) {
        return IntStream.rangeClosed(1, n)
                .mapToObj(i -> stop(
                        i,
                        5 + 5 * random.nextInt(directed ? 3 : 9),
                        10 + 5 * random.nextInt(17),
                        Direction.ASCENDING,
                        directed && i % 2 == 0))
                .toList();
    }

    private static Stop stop(int number, double celsius, double percent, Direction direction, boolean directed) {
        Setpoint at = at(celsius, percent);
        return new Stop(new Point(number, at.temperature(), at.humidity(), direction), directed);
    }

    private static Setpoint at(double celsius, double percent) {
        return new Setpoint(Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent));
    }
}
