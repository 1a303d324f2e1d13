// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class RandomStreamTest {
    private static final long[] STATE = {
        0x012de1babb3c4104L, 0xa5a818b8fc5aa503L, 0xb124ea2b701f4993L, 0x18e0374933d8c782L
    };

    @Test
    void the_generator_and_its_jump_agree_with_commons_rng() {
        RandomStream ours = RandomStream.ofState(STATE[0], STATE[1], STATE[2], STATE[3]);
        XoShiRo256PlusPlus theirs = new XoShiRo256PlusPlus(STATE.clone());
        RandomStream fork = ours.fork();
        UniformRandomProvider copy = theirs.jump();
        for (int i = 0; i < 1000; i++) {
            assertEquals(copy.nextLong(), fork.nextLong());
            assertEquals(theirs.nextLong(), ours.nextLong());
        }
    }

    @Test
    void columns_hold_what_single_draws_give() {
        RandomStream single = RandomStream.seeded(3);
        RandomStream columns = RandomStream.seeded(3);
        double[] column = new double[100_001];
        for (int round = 0; round < 2; round++) {
            columns.layered(NormalLayers.STANDARD, column, 0, column.length - 1);
            for (int i = 0; i < column.length - 1; i++) {
                assertEquals(single.normal(), column[i], 0);
            }
            columns.symmetric(column, 0, column.length - 1);
            for (int i = 0; i < column.length - 1; i++) {
                assertEquals(single.symmetric(), column[i], 0);
            }
            assertEquals(0, column[column.length - 1], 0);
        }
        assertEquals(single.nextLong(), columns.nextLong());
    }

    /** Two hundred equally likely classes; the limit is passed by chance once in a hundred thousand seeds. */
    @Test
    void normal_variates_fill_equally_likely_classes_evenly() {
        long seed = 20_260_101;
        RandomStream stream = RandomStream.seeded(seed);
        int classes = 200;
        double[] edges = new double[classes - 1];
        for (int i = 0; i < edges.length; i++) {
            edges[i] = new NormalDistribution(0, 1).inverseCumulativeProbability((i + 1.0) / classes);
        }
        long[] counts = new long[classes];
        int draws = 2_000_000;
        for (int i = 0; i < draws; i++) {
            int found = java.util.Arrays.binarySearch(edges, stream.normal());
            counts[found < 0 ? -found - 1 : found]++;
        }
        double expected = (double) draws / classes;
        double chiSquared = 0;
        for (long count : counts) {
            chiSquared += (count - expected) * (count - expected) / expected;
        }
        double limit = new ChiSquaredDistribution(classes - 1).inverseCumulativeProbability(1 - 1e-5);
        assertTrue(chiSquared < limit, "seed " + seed + ": chi-squared " + chiSquared + ", limit " + limit);
    }

    @Test
    void the_tail_beyond_the_last_layer_has_its_share() {
        long seed = 7;
        RandomStream stream = RandomStream.seeded(seed);
        int beyond = 0;
        int draws = 4_000_000;
        for (int i = 0; i < draws; i++) {
            if (Math.abs(stream.normal()) > 3.6) {
                beyond++;
            }
        }
        double expected = draws * 2 * new NormalDistribution(0, 1).cumulativeProbability(-3.6);
        assertEquals(expected, beyond, 4.5 * Math.sqrt(expected), "seed " + seed);
    }
}
