// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.comparison;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * One value from several results with their standard uncertainties.
 *
 * @param value weighted mean
 * @param standardUncertainty of the value, from the uncertainties used as weights
 * @param chiSquared Σ((x - mean)/u)², with the results' own uncertainties
 * @param degreesOfFreedom number of results less one
 * @param betweenVariance variance added to each result's own to make them consistent; zero for a plain weighted mean
 */
public record Consensus(
        double value, double standardUncertainty, double chiSquared, int degreesOfFreedom, double betweenVariance) {
    private static final int MOST_BISECTIONS = 200;

    /** The mean weighted by 1/u². */
    public static Consensus weightedMean(double[] values, double[] u) {
        require(values, u);
        return about(values, u, 0);
    }

    /**
     * Mandel and Paule: a between-results variance is added until the weighted sum of squares equals its expectation,
     * n - 1; none is added if it is already below. Source: Paule and Mandel, J. Res. NBS 87 (1982) 377.
     */
    public static Consensus mandelPaule(double[] values, double[] u) {
        Consensus plain = weightedMean(values, u);
        if (plain.chiSquared() <= plain.degreesOfFreedom()) {
            return plain;
        }
        double low = 0;
        double high = 1;
        while (squares(values, u, high) > plain.degreesOfFreedom()) {
            high *= 2;
        }
        for (int i = 0; i < MOST_BISECTIONS && low < high; i++) {
            double middle = low + (high - low) / 2;
            if (squares(values, u, middle) > plain.degreesOfFreedom()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return about(values, u, high);
    }

    /**
     * DerSimonian and Laird: the between-results variance by the method of moments, in one step from the weighted sum of
     * squares; none if that is no larger than n - 1. Source: DerSimonian and Kacker, Contemp. Clin. Trials 28 (2007) 105.
     */
    public static Consensus derSimonianLaird(double[] values, double[] u) {
        Consensus plain = weightedMean(values, u);
        double weights = 0;
        double squaredWeights = 0;
        for (double own : u) {
            double weight = 1 / (own * own);
            weights += weight;
            squaredWeights += weight * weight;
        }
        double excess = plain.chiSquared() - plain.degreesOfFreedom();
        return about(values, u, Math.max(0, excess / (weights - squaredWeights / weights)));
    }

    /** The Birge ratio √(χ²/ν): well above one, the uncertainties do not explain the differences. */
    public double birgeRatio() {
        return Math.sqrt(chiSquared / degreesOfFreedom);
    }

    /** The standard uncertainty enlarged by the Birge ratio if that exceeds one. */
    public double birgeUncertainty() {
        return standardUncertainty * Math.max(1, birgeRatio());
    }

    /** The probability of a χ² at least as large if the results are consistent. */
    public double probabilityIfConsistent() {
        return 1 - new ChiSquaredDistribution(degreesOfFreedom).cumulativeProbability(chiSquared);
    }

    private static Consensus about(double[] values, double[] u, double between) {
        double total = 0;
        for (double own : u) {
            total += 1 / (own * own + between);
        }
        double mean = mean(values, u, between);
        double chiSquared = 0;
        for (int i = 0; i < values.length; i++) {
            double score = (values[i] - mean) / u[i];
            chiSquared += score * score;
        }
        return new Consensus(mean, Math.sqrt(1 / total), chiSquared, values.length - 1, between);
    }

    private static double mean(double[] values, double[] u, double between) {
        double sum = 0;
        double total = 0;
        for (int i = 0; i < values.length; i++) {
            double weight = 1 / (u[i] * u[i] + between);
            sum += weight * (values[i] - values[0]);
            total += weight;
        }
        return values[0] + sum / total;
    }

    private static double squares(double[] values, double[] u, double between) {
        double mean = mean(values, u, between);
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += (values[i] - mean) * (values[i] - mean) / (u[i] * u[i] + between);
        }
        return sum;
    }

    private static void require(double[] values, double[] u) {
        if (values.length < 2 || values.length != u.length) {
            throw new IllegalArgumentException("a consensus takes two results or more, each with an uncertainty, got "
                    + values.length + " and " + u.length);
        }
        for (double own : u) {
            if (!(own > 0) || Double.isInfinite(own)) {
                throw new IllegalArgumentException("standard uncertainties must be finite and above zero, was " + own);
            }
        }
    }
}
