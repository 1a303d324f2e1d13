// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Origin;
import java.util.Arrays;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Standard deviations against JCGM 101, 6.4; both ways of drawing against each other. */
class DrawTest {
    private static final long SEED = 5;
    private static final int DRAWS = 200_000;

    private static Input input(Distribution distribution, double freedom) {
        return new Input("x", "x", 0, "1", distribution, freedom, Origin.ASSUMED, "test");
    }

    @TestFactory
    Stream<DynamicTest> draws_have_the_standard_deviation_of_their_distribution() {
        double infinite = Double.POSITIVE_INFINITY;
        return Stream.of(
                        input(new Distribution.Normal(2), infinite),
                        input(new Distribution.Expanded(2, 2), infinite),
                        input(new Distribution.Rectangular(2), infinite),
                        input(new Distribution.Triangular(2), infinite),
                        input(new Distribution.UShaped(2), infinite),
                        input(new Distribution.Trapezoidal(2, 0.4), infinite),
                        input(new Distribution.InexactLimits(2, 1), infinite))
                .map(input -> dynamicTest(input.distribution().toString(), () -> {
                    Draw draw = Draw.of(input);
                    RandomStream stream = RandomStream.seeded(SEED);
                    double[] direct = sorted(() -> draw.from(stream));
                    double[] shaped = sorted(() -> draw.from(stream.normal(), stream));
                    double[] filled = new double[DRAWS];
                    draw.fill(filled, 0, DRAWS, 10, stream);
                    double[] column =
                            Arrays.stream(filled).map(x -> x - 10).sorted().toArray();
                    double u = input.standardUncertainty();
                    assertEquals(u, deviation(column), 0.01 * u, "by the column, seed " + SEED);
                    assertEquals(direct[DRAWS / 5], column[DRAWS / 5], 0.02 * u, "quantile 0.2, seed " + SEED);
                    assertEquals(u, deviation(direct), 0.01 * u, "direct, seed " + SEED);
                    assertEquals(u, deviation(shaped), 0.01 * u, "from a normal, seed " + SEED);
                    assertEquals(direct[DRAWS / 5], shaped[DRAWS / 5], 0.02 * u, "quantile 0.2, seed " + SEED);
                }));
    }

    @Test
    void few_degrees_of_freedom_give_the_quantiles_of_student_t() {
        for (double freedom : new double[] {1, 1.6, 4, 30.5}) {
            Draw draw = Draw.of(input(new Distribution.StudentT(1, freedom), freedom));
            RandomStream stream = RandomStream.seeded(SEED);
            double[] sorted = new double[DRAWS];
            draw.fill(sorted, 0, DRAWS, 0, stream);
            Arrays.sort(sorted);
            for (double p : new double[] {0.05, 0.3, 0.8, 0.95}) {
                double expected = new TDistribution(freedom).inverseCumulativeProbability(p);
                double density = new TDistribution(freedom).density(expected);
                double error = Math.sqrt(p * (1 - p) / DRAWS) / density;
                assertEquals(expected, sorted[(int) (p * DRAWS)], 4.5 * error, "nu " + freedom + ", p " + p);
            }
        }
    }

    /** Two hundred equally likely classes; the limit is passed by chance once in a hundred thousand seeds. */
    @Test
    void layered_variates_fill_equally_likely_classes_of_student_t_evenly() {
        int classes = 200;
        int draws = 500_000;
        double limit = new ChiSquaredDistribution(classes - 1).inverseCumulativeProbability(1 - 1e-5);
        for (double freedom : new double[] {1, 1.3, 2, 4, 9, 30.5, 1e4, 1e8}) {
            double[] edges = new double[classes - 1];
            for (int i = 0; i < edges.length; i++) {
                edges[i] = new TDistribution(freedom, 1e-13).inverseCumulativeProbability((i + 1.0) / classes);
            }
            StudentLayers layers = new StudentLayers(freedom);
            RandomStream stream = RandomStream.seeded(SEED);
            long[] counts = new long[classes];
            for (int i = 0; i < draws; i++) {
                int found = Arrays.binarySearch(edges, stream.layered(layers));
                counts[found < 0 ? -found - 1 : found]++;
            }
            double expected = (double) draws / classes;
            double chiSquared = Arrays.stream(counts)
                    .mapToDouble(n -> (n - expected) * (n - expected) / expected)
                    .sum();
            assertTrue(chiSquared < limit, "seed " + SEED + ", nu " + freedom + ": " + chiSquared + " above " + limit);
        }
    }

    /** Where layers end and the tail begins, and farther out, as many as there have to be. */
    @Test
    void layered_variates_have_the_tails_of_student_t() {
        int draws = 1_500_000;
        for (double freedom : new double[] {1, 3, 9, 1000}) {
            TDistribution known = new TDistribution(freedom);
            StudentLayers layers = new StudentLayers(freedom);
            RandomStream stream = RandomStream.seeded(SEED);
            double[] sorted = new double[draws];
            for (int i = 0; i < draws; i++) {
                sorted[i] = Math.abs(stream.layered(layers));
            }
            Arrays.sort(sorted);
            for (double beyond : new double[] {1e-2, 1e-3, 3e-4, 1e-4}) {
                double edge = -known.inverseCumulativeProbability(beyond / 2);
                int found = Arrays.binarySearch(sorted, edge);
                double count = draws - (found < 0 ? -found - 1 : found);
                double expected = draws * beyond;
                assertEquals(expected, count, 4.5 * Math.sqrt(expected), "nu " + freedom + " beyond " + edge);
            }
        }
    }

    private static double[] sorted(java.util.function.DoubleSupplier supplier) {
        double[] values = new double[DRAWS];
        Arrays.setAll(values, i -> supplier.getAsDouble());
        Arrays.sort(values);
        return values;
    }

    private static double deviation(double[] values) {
        return Math.sqrt(Arrays.stream(values).map(x -> x * x).sum() / values.length);
    }
}
