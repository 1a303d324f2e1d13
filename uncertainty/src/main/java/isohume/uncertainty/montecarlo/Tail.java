// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import java.util.Arrays;

/**
 * The lowest of many values in ascending order, at least as many as were asked for. Finding them takes a part of the time
 * of sorting all. Of the highest, the same with all signs changed.
 */
final class Tail {
    private final double[] sorted;
    private final boolean everything;

    private Tail(double[] sorted, boolean everything) {
        Arrays.sort(sorted);
        this.sorted = sorted;
        this.everything = everything;
    }

    /**
     * Of values, which are finite and in no order, each times {@code sign}.
     *
     * @param depth how many are needed
     * @param bound where somebody supposes that somewhat more than those end; if it is fewer or many more, all are sorted
     */
    static Tail of(double[] values, int sign, int depth, double bound) {
        double[] found = new double[Math.min(values.length, 4 * depth)];
        int count = collect(bound, values, sign, found);
        if (count >= depth && count < found.length) {
            return new Tail(Arrays.copyOf(found, count), false);
        }
        double[] all = new double[values.length];
        int every = collect(Double.POSITIVE_INFINITY, values, sign, all);
        return new Tail(Arrays.copyOf(all, every), true);
    }

    /** Puts the values up to the bound into {@code found} until that is full, and says how many there are. */
    private static int collect(double bound, double[] values, int sign, double[] found) {
        int next = 0;
        for (int i = 0; i < values.length && next < found.length; i++) {
            double value = sign * values[i];
            if (value <= bound) {
                found[next] = value;
                next++;
            }
        }
        return next;
    }

    /** The value of a rank, counted from 0; infinite where that is farther than the tail is known. */
    double at(int rank) {
        return rank < sorted.length ? sorted[rank] : Double.POSITIVE_INFINITY;
    }

    /** All values up to the bound, from the values that this tail was taken from. */
    double[] upTo(double bound, double[] values, int sign) {
        if (!everything && bound > sorted[sorted.length - 1]) {
            double[] found = new double[values.length];
            return Arrays.copyOf(found, collect(bound, values, sign, found));
        }
        int length = sorted.length;
        while (length > 0 && sorted[length - 1] > bound) {
            length--;
        }
        return Arrays.copyOf(sorted, length);
    }

    /** The tail of several sets of values together, of which these are parts. */
    static Tail joined(double[][] parts) {
        int length = Arrays.stream(parts).mapToInt(part -> part.length).sum();
        double[] all = new double[length];
        int next = 0;
        for (double[] part : parts) {
            System.arraycopy(part, 0, all, next, part.length);
            next += part.length;
        }
        return new Tail(all, false); // runs in order, which sorting merges
    }
}
