// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

/**
 * What a window's stretches scatter about their curve, and how much of that a slow change meets. Noise that resembles
 * its neighbours hides more of a slow change than its scatter says: the long-run variance is the variance times 1 + 2 Σ
 * ρₖ. That sum is taken as the larger of two estimates: of a first-order autoregression from ρ₁, as in {@link
 * isohume.uncertainty.series.Series}, and of the first few ρₖ with Bartlett's weights, for noise with a white part.
 *
 * @param scatter standard deviation of single stretches
 * @param factor long-run variance over variance, at least 1
 * @param freedom stretches less the parameters that they have determined
 */
record Residuals(double scatter, double factor, double freedom) {
    private static final int MOST_LAGS = 8;
    private static final double MOST_AUTOCORRELATION = 0.95;

    static Residuals of(double[] residuals, boolean[] present, double parameters) {
        int n = 0;
        double squares = 0;
        for (int i = 0; i < residuals.length; i++) {
            n += present[i] ? 1 : 0;
            squares += present[i] ? residuals[i] * residuals[i] : 0;
        }
        double freedom = Math.max(1, n - parameters);
        double variance = squares / freedom;
        if (squares == 0) {
            return new Residuals(0, 1, freedom);
        }
        double bartlett = 1;
        double first = 0;
        int lags = Math.min(MOST_LAGS, n / 6);
        for (int lag = 1; lag <= Math.max(1, lags); lag++) {
            double rho = autocorrelation(residuals, present, lag, squares / n);
            rho = rho + (parameters + 4 * Math.max(0, rho)) / n; // too small on average, see Drift
            first = lag == 1 ? rho : first;
            bartlett += 2 * (1 - lag / (lags + 1.0)) * rho;
        }
        double one = Math.clamp(first, 0, MOST_AUTOCORRELATION);
        return new Residuals(Math.sqrt(variance), Math.max(bartlett, (1 + one) / (1 - one)), freedom);
    }

    private static double autocorrelation(double[] residuals, boolean[] present, int lag, double variance) {
        double products = 0;
        int pairs = 0;
        for (int i = lag; i < residuals.length; i++) {
            if (present[i] && present[i - lag]) {
                products += residuals[i] * residuals[i - lag];
                pairs++;
            }
        }
        return pairs == 0 ? 0 : products / pairs / variance;
    }

    /** Variance of one stretch as slow changes meet it. */
    double longRunVariance() {
        return scatter * scatter * factor;
    }

    /** By how much uncertainties grow because the scatter is itself estimated: from Student's t, as a variance. */
    double student() {
        double worth = Math.max(3, freedom / factor);
        return worth / (worth - 2);
    }
}
