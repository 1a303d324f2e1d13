// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

/** A coverage interval, in the measurand's unit. */
public record Interval(double low, double high) {
    public double width() {
        return high - low;
    }

    /** The probabilistically symmetric interval of sorted values (JCGM 101, 7.7.2). */
    static Interval symmetric(double[] sorted, double probability) {
        int q = covered(sorted.length, probability);
        int r = (sorted.length - q + 1) / 2; // (M - q)/2, or half more if that is not whole; counted from 1
        return new Interval(sorted[r - 1], sorted[r + q - 1]);
    }

    /** The shortest interval of sorted values (JCGM 101, 5.3.4 and 7.7.2). */
    static Interval shortest(double[] sorted, double probability) {
        int q = covered(sorted.length, probability);
        int best = 0;
        for (int r = 1; r + q < sorted.length; r++) {
            if (sorted[r + q] - sorted[r] < sorted[best + q] - sorted[best]) {
                best = r;
            }
        }
        return new Interval(sorted[best], sorted[best + q]);
    }

    private static int covered(int count, double probability) {
        return (int) Math.min(count - 1L, Math.round(probability * count));
    }
}
