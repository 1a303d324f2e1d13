// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Both ends of many values in ascending order, as far as coverage intervals look at them. */
final class Ends {
    private static final int SAMPLE = 512;

    private final Tail low;
    private final Tail high; // of the values with their signs changed
    private final int count;

    private Ends(Tail low, Tail high, int count) {
        this.low = low;
        this.high = high;
        this.count = count;
    }

    /** Of values in no order. A sample of them says where their ends begin. */
    static Ends of(double[] values, double probability) {
        int depth = depth(values.length, probability);
        double expected = (double) depth / values.length * SAMPLE;
        int rank = (int) Math.ceil(expected + 2.5 * Math.sqrt(expected)); // one time in a hundred that is too few
        if (values.length < 8 * SAMPLE || rank > SAMPLE / 2) {
            double all = Double.POSITIVE_INFINITY;
            return new Ends(Tail.of(values, 1, depth, all), Tail.of(values, -1, depth, all), values.length);
        }
        double[] sample = new double[SAMPLE];
        for (int i = 0; i < SAMPLE; i++) {
            sample[i] = values[i * (values.length / SAMPLE)];
        }
        Arrays.sort(sample);
        return new Ends(
                Tail.of(values, 1, depth, sample[rank]),
                Tail.of(values, -1, depth, -sample[SAMPLE - 1 - rank]),
                values.length);
    }

    /** Of the values of all blocks together; both ends side by side, if that is wanted. */
    static Ends of(List<Block> blocks, double probability, boolean sideBySide) {
        int count = blocks.stream().mapToInt(Block::count).sum();
        int depth = depth(count, probability);
        IntStream signs = IntStream.of(1, -1);
        Tail[] tails = (sideBySide ? signs.parallel() : signs)
                .mapToObj(sign -> tail(blocks, sign, depth, count))
                .toArray(Tail[]::new);
        return new Ends(tails[0], tails[1], count);
    }

    /** Below the highest of what would be each block's share, there are as many values as are needed or more. */
    private static Tail tail(List<Block> blocks, int sign, int depth, int count) {
        double bound = Double.NEGATIVE_INFINITY;
        for (Block block : blocks) {
            int share = (int) Math.ceil((double) depth * block.count() / count);
            bound = Math.max(bound, block.ends().side(sign).at(Math.max(0, share - 1)));
        }
        double[][] parts = new double[blocks.size()][];
        for (int i = 0; i < parts.length; i++) {
            Block block = blocks.get(i);
            parts[i] = block.ends().side(sign).upTo(bound, block.values(), sign);
        }
        return Tail.joined(parts);
    }

    private static int depth(int count, double probability) {
        return count - Interval.covered(count, probability) + 1;
    }

    private Tail side(int sign) {
        return sign > 0 ? low : high;
    }

    int count() {
        return count;
    }

    /** The value of a rank counted from 0, which is near one of the ends. */
    double at(int rank) {
        double value = low.at(rank);
        return Double.isInfinite(value) ? -high.at(count - 1 - rank) : value;
    }
}
