// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.conformity;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Risks over a whole population (JCGM 106, 9.5), for measured values that spread normally about the true one.
 *
 * @param consumer global consumer's risk: the part of all items that are accepted but do not conform
 * @param producer global producer's risk: the part of all items that are rejected but conform
 * @param accepted the part of all items that are accepted
 * @param conforming the part of all items that conform
 */
public record Risk(double consumer, double producer, double accepted, double conforming) {
    private static final double RANGE = 10; // standard deviations of prior and measurement that are integrated over
    private static final int ORDER = 12;

    /**
     * The risks of accepting what is measured inside an interval.
     *
     * @param measurementUncertainty standard uncertainty of a measured value, above zero
     * @param acceptance the acceptance interval
     */
    public static Risk global(Prior prior, double measurementUncertainty, Tolerance tolerance, Tolerance acceptance) {
        requireAboveZero(measurementUncertainty);
        NormalDistribution normal = new NormalDistribution(0, 1);
        Integrand rejected = value -> 1 - accepted(normal, value, measurementUncertainty, acceptance);
        Integrand taken = value -> accepted(normal, value, measurementUncertainty, acceptance);
        RealDistribution population = prior.distribution();
        double step = measurementUncertainty;
        double consumer = integral(population, step, Double.NEGATIVE_INFINITY, tolerance.lower(), taken)
                + integral(population, step, tolerance.upper(), Double.POSITIVE_INFINITY, taken);
        double producer = integral(population, step, tolerance.lower(), tolerance.upper(), rejected);
        double conforming = population.cumulativeProbability(tolerance.upper())
                - population.cumulativeProbability(tolerance.lower());
        return new Risk(consumer, producer, conforming - producer + consumer, conforming);
    }

    /**
     * The probability that one item conforms, given its measured value and what was known before (JCGM 106, 7.2). One
     * less this is the specific consumer's risk if it is accepted; this is the specific producer's risk if it is rejected.
     */
    public static double conformance(Prior prior, double measured, double measurementUncertainty, Tolerance tolerance) {
        requireAboveZero(measurementUncertainty);
        RealDistribution population = prior.distribution();
        Integrand likelihood = value -> {
            double z = (measured - value) / measurementUncertainty;
            return StrictMath.exp(-0.5 * z * z);
        };
        double lowest = measured - RANGE * measurementUncertainty;
        double highest = measured + RANGE * measurementUncertainty;
        double all = integral(population, measurementUncertainty, lowest, highest, likelihood);
        double inside = integral(
                population,
                measurementUncertainty,
                Math.max(lowest, tolerance.lower()),
                Math.min(highest, tolerance.upper()),
                likelihood);
        if (!(all > 0)) {
            throw new IllegalArgumentException(
                    "a measured value of " + measured + " is impossible under the prior " + prior + "; check its unit");
        }
        return inside / all;
    }

    /** Part of the rejected items that conform. */
    public double conformingAmongRejected() {
        return producer / (1 - accepted);
    }

    /** Part of the accepted items that conform. */
    public double conformingAmongAccepted() {
        return 1 - consumer / accepted;
    }

    /** The measurement capability index C_m = T/(4u) (JCGM 106, 7.6) of a two-sided tolerance. */
    public static double capabilityIndex(Tolerance tolerance, double measurementUncertainty) {
        requireAboveZero(measurementUncertainty);
        return (tolerance.upper() - tolerance.lower()) / (4 * measurementUncertainty);
    }

    private interface Integrand {
        double at(double value);
    }

    private static double accepted(NormalDistribution normal, double value, double u, Tolerance acceptance) {
        return normal.cumulativeProbability((acceptance.upper() - value) / u)
                - normal.cumulativeProbability((acceptance.lower() - value) / u);
    }

    private static double integral(RealDistribution population, double step, double from, double to, Integrand part) {
        double spread = Math.sqrt(population.getNumericalVariance());
        double middle = population.getNumericalMean();
        double low = Math.max(Math.max(from, middle - RANGE * spread), population.getSupportLowerBound());
        double high = Math.min(Math.min(to, middle + 2 * RANGE * spread), population.getSupportUpperBound());
        if (!(high > low)) {
            return 0;
        }
        int panels = (int) Math.min(100_000, Math.ceil((high - low) / Math.min(step, spread / 2)));
        GaussIntegratorFactory factory = new GaussIntegratorFactory();
        double width = (high - low) / panels;
        double sum = 0;
        for (int panel = 0; panel < panels; panel++) {
            double start = low + panel * width;
            GaussIntegrator gauss = factory.legendre(ORDER, start, start + width);
            sum += gauss.integrate(value -> population.density(value) * part.at(value));
        }
        return sum;
    }

    private static void requireAboveZero(double u) {
        if (!(u > 0) || Double.isInfinite(u)) {
            throw new IllegalArgumentException("the standard uncertainty of a measured value is above zero, was " + u);
        }
    }
}
