// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

/**
 * What is new in each reading of some series, if what they are left with is noise upon a level that wanders (a random
 * walk): the innovations of a Kalman filter for the local level model, scaled to the noise's variance. The first reading
 * sets the level and tells nothing.
 *
 * <p>After Harvey, Forecasting, Structural Time Series Models and the Kalman Filter, 1989, section 3.2 (from memory).
 */
final class Whitening {
    private final double wander;
    private final double[] levels;
    private final double[] news;
    private double open = Double.NaN;
    private double logVariance;

    /** Of so many series; wander is the variance of the level's step over an interval, in variances of the noise. */
    Whitening(double wander, int series) {
        this.wander = wander;
        levels = new double[series];
        news = new double[series];
    }

    /** Whether readings, so many intervals after those before, tell something new. */
    boolean add(double intervals, double... readings) {
        if (Double.isNaN(open)) {
            System.arraycopy(readings, 0, levels, 0, levels.length);
            open = 1;
            return false;
        }
        open += wander * intervals;
        double variance = open + 1;
        double share = open / variance;
        double scale = 1 / Math.sqrt(variance);
        for (int i = 0; i < levels.length; i++) {
            double error = readings[i] - levels[i];
            news[i] = error * scale;
            levels[i] += share * error;
        }
        open = share;
        logVariance += Math.log(variance);
        return true;
    }

    double news(int series) {
        return news[series];
    }

    /** The sum of the logarithms of the variances, for a likelihood. */
    double logVariance() {
        return logVariance;
    }
}
