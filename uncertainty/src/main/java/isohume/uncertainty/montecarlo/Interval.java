// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

/** A coverage interval, in the measurand's unit. */
public record Interval(double low, double high) {
    public double width() {
        return high - low;
    }

    /** The probabilistically symmetric interval of sorted values (JCGM 101, 7.7.2). */
    static Interval symmetric(Ends sorted, double probability) {
        int q = covered(sorted.count(), probability);
        int r = (sorted.count() - q + 1) / 2; // (M - q)/2, or half more if that is not whole; counted from 1
        return new Interval(sorted.at(r - 1), sorted.at(r + q - 1));
    }

    /** The shortest interval of sorted values (JCGM 101, 5.3.4 and 7.7.2). */
    static Interval shortest(Ends sorted, double probability) {
        int q = covered(sorted.count(), probability);
        Interval best = new Interval(sorted.at(0), sorted.at(q));
        for (int r = 1; r + q < sorted.count(); r++) {
            Interval next = new Interval(sorted.at(r), sorted.at(r + q));
            if (next.width() < best.width()) {
                best = next;
            }
        }
        return best;
    }

    /** How many of so many values an interval covers. */
    static int covered(int count, double probability) {
        return (int) Math.min(count - 1L, Math.round(probability * count));
    }
}
