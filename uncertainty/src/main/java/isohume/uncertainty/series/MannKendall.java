// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.series;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The Mann-Kendall test for a trend, which asks only whether later values are larger, and Sen's slope.
 *
 * <p>It assumes independent values: thin an autocorrelated series first, or use {@link Drift}. Without ties and with up
 * to {@value #LARGEST_EXACT} values the probability is exact (by counting inversions); otherwise it is the normal
 * approximation with the variance corrected for ties and S brought one nearer to zero.
 *
 * @param s number of pairs that rise less number that fall
 * @param variance of S if there is no trend, corrected for ties
 * @param z standardised S, zero if S is
 * @param probabilityIfSteady two-sided: of an S at least this far from zero if there is no trend
 * @param senSlopePerSecond median slope of all pairs
 */
public record MannKendall(long s, double variance, double z, double probabilityIfSteady, double senSlopePerSecond) {
    static final int LARGEST_EXACT = 12;

    /** Values with increasing times in seconds; takes at least four. */
    public static MannKendall of(double[] seconds, double[] values) {
        int n = values.length;
        if (n < 4 || seconds.length != n) {
            throw new IllegalArgumentException("a trend test takes at least four values, each with a time, got " + n
                    + " values and " + seconds.length + " times");
        }
        long s = 0;
        double[] slopes = new double[n * (n - 1) / 2];
        int pair = 0;
        for (int j = 1; j < n; j++) {
            for (int i = 0; i < j; i++) {
                s += (long) Math.signum(values[j] - values[i]);
                slopes[pair] = (values[j] - values[i]) / (seconds[j] - seconds[i]);
                pair++;
            }
        }
        double tieTerm = tieTerm(values);
        double variance = (n * (n - 1.0) * (2.0 * n + 5) - tieTerm) / 18;
        double z = variance == 0 || s == 0 ? 0 : (s - Math.signum((double) s)) / Math.sqrt(variance);
        double probability = tieTerm == 0 && n <= LARGEST_EXACT
                ? Math.min(1, 2 * upperTail(n, Math.abs(s)))
                : 2 * new NormalDistribution(0, 1).cumulativeProbability(-Math.abs(z));
        return new MannKendall(s, variance, z, probability, median(slopes));
    }

    /** The exact probability of an S at least as large among n values without trend and without ties. */
    static double upperTail(int n, long s) {
        double[] counts = {1}; // of permutations by number of pairs that fall
        for (int size = 2; size <= n; size++) {
            double[] more = new double[counts.length + size - 1];
            for (int i = 0; i < counts.length; i++) {
                for (int added = 0; added < size; added++) {
                    more[i + added] += counts[i];
                }
            }
            counts = more;
        }
        double all = 0;
        double atLeast = 0;
        int pairs = n * (n - 1) / 2;
        for (int fallen = 0; fallen < counts.length; fallen++) {
            all += counts[fallen];
            if (pairs - 2L * fallen >= s) {
                atLeast += counts[fallen];
            }
        }
        return atLeast / all;
    }

    private static double tieTerm(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double sum = 0;
        int run = 1;
        for (int i = 1; i <= sorted.length; i++) {
            if (i < sorted.length && sorted[i] == sorted[i - 1]) {
                run++;
            } else {
                sum += run * (run - 1.0) * (2.0 * run + 5);
                run = 1;
            }
        }
        return sum;
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        int middle = values.length / 2;
        return values.length % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
    }
}
