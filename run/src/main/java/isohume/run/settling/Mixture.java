// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import isohume.uncertainty.fit.Estimate;

/**
 * What is known of a signal's exponentials after a window: the probable amplitudes at its end. Early time constants,
 * which a window shows well, may all be there together, and with them one late one; which one is not known, so all of
 * them are averaged over, each weighted by how probable the window makes it.
 *
 * <p>Bayesian linear regression with a flat prior of the level and independent normal priors of the amplitudes (Bishop,
 * Pattern Recognition and Machine Learning, 2006, 3.3 and 3.4; from memory). What the window cannot show keeps its
 * prior's width. All is in units of the priors' standard deviations, so that nothing overflows.
 */
final class Mixture {
    private static final int EARLY = TimeConstants.EARLY;
    private static final int LATE = TimeConstants.COUNT - EARLY;

    private final Moments moments;
    private final double variance;
    private final Prior prior;
    private final int from; // faster ones are over
    private final double[][] root = new double[EARLY][EARLY]; // Cholesky's, of 1 + what was seen
    private final double[][] lateRow = new double[LATE][EARLY + 1]; // its last row, by late time constant
    private final double[] seen = new double[EARLY]; // solved forward
    private final double[] seenLate = new double[LATE];
    private final double[] share = new double[LATE];

    /**
     * After a window.
     *
     * @param variance of one stretch, as slow changes meet it
     */
    Mixture(Moments moments, double variance, Prior prior) {
        this.moments = moments;
        this.variance = variance;
        this.prior = prior;
        this.from = Math.min(moments.known, EARLY);
        for (int k = from; k < EARLY; k++) {
            double diagonal = row(k, root[k]);
            root[k][k] = root(diagonal);
        }
        for (int k = from; k < EARLY; k++) {
            seen[k] = (product(k) - inner(root[k], seen, k)) / root[k][k];
        }
        weigh();
    }

    /** Fills the row of a time constant below the early ones before it, and gives what is left on the diagonal. */
    private double row(int k, double[] row) {
        double left = 1 + scaled(k, k);
        for (int l = from; l < Math.min(k, EARLY); l++) {
            row[l] = (scaled(l, k) - inner(row, root[l], l)) / root[l][l];
            left -= row[l] * row[l];
        }
        return left;
    }

    private static double root(double diagonal) {
        return Math.sqrt(Math.max(1, diagonal)); // it is at least 1 but for rounding
    }

    private double scaled(int k, int l) {
        return moments.centred(k, l) / variance * prior.spread(k) * prior.spread(l);
    }

    /** What the values show of a time constant. */
    private double product(int k) {
        return moments.centredProduct(k) / variance * prior.spread(k);
    }

    private double inner(double[] a, double[] b, int to) {
        double sum = 0;
        for (int j = from; j < to; j++) {
            sum += a[j] * b[j];
        }
        return sum;
    }

    private void weigh() {
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < LATE; i++) {
            double[] row = lateRow[i];
            row[EARLY] = root(row(EARLY + i, row));
            seenLate[i] = (product(EARLY + i) - inner(row, seen, EARLY)) / row[EARLY];
            share[i] = 0.5 * seenLate[i] * seenLate[i] - StrictMath.log(row[EARLY]); // the rest is common to all
            best = Math.max(best, share[i]);
        }
        double sum = 0;
        for (int i = 0; i < LATE; i++) {
            share[i] = StrictMath.exp(share[i] - best);
            sum += share[i];
        }
        for (int i = 0; i < LATE; i++) {
            share[i] /= sum;
        }
    }

    /** Mean and standard uncertainty of Σ amplitude · factor, with a factor for each time constant. */
    Estimate of(double[] factor) {
        double mean = 0;
        double square = 0;
        double[] early = early(factor);
        for (int i = 0; i < LATE; i++) {
            Estimate one = of(i, factor, early);
            double u = one.standardUncertainty();
            mean += share[i] * one.value();
            square += share[i] * (one.value() * one.value() + u * u);
        }
        return new Estimate(mean, Math.sqrt(Math.max(0, square - mean * mean)));
    }

    private double[] early(double[] factor) {
        double[] early = new double[EARLY];
        for (int k = from; k < EARLY; k++) {
            early[k] = (factor[k] * prior.spread(k) - inner(root[k], early, k)) / root[k][k];
        }
        return early;
    }

    private Estimate of(int i, double[] factor, double[] early) {
        int k = EARLY + i;
        double[] row = lateRow[i];
        double late = (factor[k] * prior.spread(k) - inner(row, early, EARLY)) / row[EARLY];
        double mean = late * seenLate[i];
        double square = late * late;
        for (int j = from; j < EARLY; j++) {
            mean += early[j] * seen[j];
            square += early[j] * early[j];
        }
        return new Estimate(mean, Math.sqrt(square));
    }

    /** What would be known after a window {@code longer} times as long that shows the same. */
    Mixture after(double longer) {
        double gain = longer * longer * longer; // the variance of a slope falls with the cube of the time
        return new Mixture(moments, variance / gain, prior);
    }

    /** How many parameters the window has determined, the level included; by the most probable late time constant. */
    double parameters() {
        double[] row = lateRow[best()];
        double sum = 1 + EARLY - from + 1;
        for (int k = from; k <= EARLY; k++) {
            double[] unit = new double[EARLY];
            double left = 0;
            for (int j = k; j < EARLY; j++) {
                unit[j] = ((j == k ? 1 : 0) - inner(root[j], unit, j)) / root[j][j];
                left += unit[j] * unit[j];
            }
            double last = ((k == EARLY ? 1 : 0) - inner(row, unit, EARLY)) / row[EARLY];
            sum -= left + last * last;
        }
        return sum;
    }

    /** Amplitudes of all time constants at the window's end, of the most probable late one. */
    double[] amplitudes() {
        int i = best();
        double[] row = lateRow[i];
        double[] amplitude = new double[TimeConstants.COUNT];
        double late = seenLate[i] / row[EARLY];
        amplitude[EARLY + i] = late * prior.spread(EARLY + i);
        double[] solved = new double[EARLY];
        for (int k = EARLY - 1; k >= from; k--) {
            double sum = seen[k] - row[k] * late;
            for (int j = k + 1; j < EARLY; j++) {
                sum -= root[j][k] * solved[j];
            }
            solved[k] = sum / root[k][k];
            amplitude[k] = solved[k] * prior.spread(k);
        }
        return amplitude;
    }

    private int best() {
        int best = 0;
        for (int i = 1; i < LATE; i++) {
            best = share[i] > share[best] ? i : best;
        }
        return best;
    }
}
