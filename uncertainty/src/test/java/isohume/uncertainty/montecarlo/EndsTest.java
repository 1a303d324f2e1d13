// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import isohume.uncertainty.Budget;
import isohume.uncertainty.Correlations;
import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Origin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** The ends of many values are those of the sorted values, bit for bit, and so are the intervals taken from them. */
class EndsTest {
    private static final long SEED = 7;
    private static final double[] PROBABILITIES = {0.5, 0.9, 0.9545, 0.99, 0.9973};

    @Test
    void the_ends_of_a_set_are_those_of_the_sorted_set() {
        Random random = new Random(SEED);
        for (int count : new int[] {3, 100, 4_095, 4_096, 10_000, 37_001}) {
            for (double[] values : List.of(
                    random.doubles(count).map(x -> x * x - 0.3).toArray(),
                    DoubleStream.generate(random::nextGaussian).limit(count).toArray(),
                    DoubleStream.generate(() -> random.nextInt(4)).limit(count).toArray(),
                    DoubleStream.iterate(0, x -> x + 1).limit(count).toArray())) {
                for (double probability : PROBABILITIES) {
                    assertSame(values, Ends.of(values, probability), probability);
                }
            }
        }
    }

    @Test
    void the_ends_of_all_blocks_together_are_those_of_all_their_values_sorted() {
        Input input = Input.of("x", "x", 1, "1", new Distribution.Triangular(2), Origin.ASSUMED, "test");
        for (double probability : PROBABILITIES) {
            Budget budget = Budget.of("y", "1", List.of(input), x -> x[0] * x[0], Correlations.none(), probability);
            RandomStream stream = RandomStream.seeded(SEED);
            List<Block> blocks = new ArrayList<>();
            for (int trials : new int[] {10_000, 10_000, 251, 10_000, 8_000}) {
                blocks.add(Block.run(budget, Sampler.of(budget), stream.fork(), trials));
            }
            double[] all = blocks.stream()
                    .flatMapToDouble(block -> Arrays.stream(block.values()))
                    .toArray();
            assertSame(all, Ends.of(blocks, probability, true), probability);
        }
    }

    @Test
    void blocks_that_do_not_look_alike_have_the_same_ends_all_the_same() {
        Input input = Input.of("x", "x", 0, "1", new Distribution.Rectangular(1), Origin.ASSUMED, "test");
        List<Block> blocks = new ArrayList<>();
        for (int far : new int[] {0, 1, 5, 5, 5}) { // the lowest values all lie in one block
            Budget budget = Budget.of("y", "1", List.of(input), x -> x[0] + far);
            blocks.add(Block.run(budget, Sampler.of(budget), RandomStream.seeded(SEED + far), 10_000));
        }
        double[] all = blocks.stream()
                .flatMapToDouble(block -> Arrays.stream(block.values()))
                .toArray();
        assertSame(all, Ends.of(blocks, 0.9545, false), 0.9545);
    }

    private static void assertSame(double[] values, Ends ends, double probability) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        String which = "seed " + SEED + ", " + values.length + " values, probability " + probability;
        int covered = Interval.covered(values.length, probability);
        assertEquals(values.length, ends.count());
        for (int rank = 0; rank + covered < values.length; rank++) {
            assertEquals(sorted[rank], ends.at(rank), 0.0, which);
            assertEquals(sorted[rank + covered], ends.at(rank + covered), 0.0, which);
        }
        int first = (values.length - covered + 1) / 2 - 1;
        assertEquals(
                new Interval(sorted[first], sorted[first + covered]), Interval.symmetric(ends, probability), which);
    }
}
