// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.series;

import isohume.uncertainty.Coverage;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A straight-line drift, fitted by least squares, whose standard error allows for residuals that resemble their
 * neighbours.
 *
 * <p>The residuals are taken as a first-order autoregressive series with coefficient ρ ≥ 0. The slope is Σ wᵢ yᵢ with
 * wᵢ = (tᵢ - t̄)/Σ(t - t̄)², so its variance is σ² Σᵢⱼ wᵢ wⱼ ρ^|i-j|; σ² comes from the residual sum of squares divided
 * by its own expectation under that ρ. With ρ = 0 this is the textbook standard error. Own derivation from the
 * covariance of such a series.
 *
 * <p>Residuals about a fitted line have a lag-1 autocorrelation that is too small by about (2 + 4ρ)/n on average; that
 * much is added to the one found (own simulation, a seeded one is among the tests).
 *
 * @param slopePerSecond change of the reading per second
 * @param standardError of the slope, per second
 * @param degreesOfFreedom for a test of the slope: effective number of residuals less two, at least 1
 * @param residualAutocorrelation ρ as used, from 0 to below 1
 */
public record Drift(
        double slopePerSecond, double standardError, double degreesOfFreedom, double residualAutocorrelation) {
    private static final double MOST_AUTOCORRELATION = 0.99; // beyond, a window holds no information about its slope

    static Drift of(double[] seconds, double[] values) {
        int n = values.length;
        if (n < 3) {
            throw new IllegalArgumentException("a drift with an uncertainty takes at least three readings, got " + n);
        }
        double[] weights = slopeWeights(seconds);
        double mean = Sums.mean(values);
        double slope = 0;
        for (int i = 0; i < n; i++) {
            slope += weights[i] * (values[i] - mean);
        }
        double[] residuals = residuals(seconds, values, mean, slope);
        double squares = Sums.squaresAbout(0, residuals);
        double found = Sums.lagOne(0, residuals);
        double rho = squares == 0 ? 0 : Math.clamp(found + (2 + 4 * found) / n, 0, MOST_AUTOCORRELATION);
        double slopeFactor = quadraticForm(weights, rho);
        double expected = expectedSquares(weights, rho, slopeFactor);
        double sigma = squares == 0 ? 0 : Math.sqrt(squares / expected);
        double freedom = Math.max(1, Series.effectiveNumber(n, rho) - 2);
        return new Drift(slope, sigma * Math.sqrt(slopeFactor), freedom, rho);
    }

    /** The change over a time, in the readings' unit. */
    public double over(double windowSeconds) {
        return slopePerSecond * windowSeconds;
    }

    /** The standard error of the change over a time, in the readings' unit. */
    public double standardErrorOver(double windowSeconds) {
        return standardError * windowSeconds;
    }

    /** The probability of a slope at least this steep, up or down, if there were none: small means it drifts. */
    public double probabilityIfSteady() {
        if (standardError == 0) {
            return slopePerSecond == 0 ? 1 : 0;
        }
        double t = Math.abs(slopePerSecond) / standardError;
        return 2 * new TDistribution(degreesOfFreedom).cumulativeProbability(-t);
    }

    /** Whether the slope differs from zero at a level of confidence such as 0.95. */
    public boolean differsFromZero(double confidence) {
        double factor = Coverage.factor(confidence, degreesOfFreedom);
        return Math.abs(slopePerSecond) > factor * standardError;
    }

    private static double[] slopeWeights(double[] seconds) {
        double mean = Sums.mean(seconds);
        double squares = Sums.squaresAbout(mean, seconds);
        double[] weights = new double[seconds.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = (seconds[i] - mean) / squares;
        }
        return weights;
    }

    private static double[] residuals(double[] seconds, double[] values, double mean, double slope) {
        double middle = Sums.mean(seconds);
        double[] residuals = new double[values.length];
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] = values[i] - mean - slope * (seconds[i] - middle);
        }
        return residuals;
    }

    /** Σᵢⱼ wᵢ wⱼ ρ^|i-j|, in one pass. */
    private static double quadraticForm(double[] weights, double rho) {
        double sum = 0;
        double before = 0;
        for (double weight : weights) {
            sum += weight * (weight + 2 * before);
            before = rho * (before + weight);
        }
        return sum;
    }

    /** The residual sum of squares to expect for σ = 1: n less what the fitted mean and slope take away. */
    private static double expectedSquares(double[] weights, double rho, double slopeFactor) {
        int n = weights.length;
        double takenByMean = n / Series.effectiveNumber(n, rho);
        double squaresOfWeights = quadraticForm(weights, 0);
        return n - takenByMean - slopeFactor / squaresOfWeights;
    }
}
