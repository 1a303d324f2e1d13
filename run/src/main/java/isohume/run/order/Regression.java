// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

/**
 * Bayesian linear regression with unknown noise: normal coefficients, inverse-gamma variance, both conjugate, so that each
 * observation is one update and the order of them does not matter. A few observations move it a little, many a lot.
 *
 * <p>Gelman et al., Bayesian Data Analysis, chapter on regression, with an informative prior; the update is the recursive
 * least-squares form of it (Sherman–Morrison).
 */
final class Regression {
    private final double[] mean;
    private final double[][] covariance; // in units of the noise variance
    private double degrees;
    private double squares; // sum of squares, prior included

    /**
     * Coefficients of zero before anything is seen.
     *
     * @param spread prior standard deviation of each coefficient, in units of the noise
     * @param noise prior standard deviation of the noise
     * @param degrees of freedom that this noise is worth, above 2
     */
    Regression(double[] spread, double noise, double degrees) {
        int n = spread.length;
        mean = new double[n];
        covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            covariance[i][i] = spread[i] * spread[i];
        }
        this.degrees = degrees;
        squares = degrees * noise * noise;
    }

    void observe(double[] x, double y) {
        double[] gain = times(x);
        double width = 1 + dot(x, gain);
        double surprise = y - dot(x, mean);
        for (int i = 0; i < x.length; i++) {
            mean[i] += gain[i] * surprise / width;
            for (int j = 0; j < x.length; j++) {
                covariance[i][j] -= gain[i] * gain[j] / width;
            }
        }
        degrees++;
        squares += surprise * surprise / width;
    }

    double mean(double[] x) {
        return dot(x, mean);
    }

    /** Variance of the noise; the tails of Student's t are counted in. */
    double noise() {
        return squares / degrees * degrees / (degrees - 2);
    }

    /** Variance of {@code x·β} for what is not known of the coefficients. */
    double doubt(double[] x) {
        return noise() * dot(x, times(x));
    }

    private double[] times(double[] x) {
        double[] product = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            product[i] = dot(covariance[i], x);
        }
        return product;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
