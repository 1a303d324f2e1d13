// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Coverage factors (GUM annex G) and the probabilities they stand for. */
public final class Coverage {
    /** The probability within two standard deviations of a normal distribution, "95.45 %": k is 2 if u is well known. */
    public static final double TWO_SIGMA = 0.9544997361036416;

    /** Above this many degrees of freedom, t and normal quantiles agree to 1e-9. */
    private static final double AS_GOOD_AS_INFINITE = 1e9;

    private static final double QUANTILE_ACCURACY = 1e-14;

    private Coverage() {}

    /**
     * The factor k for which y ± k·u holds the probability, from Student's t.
     *
     * @param probability two-sided, above 0 and below 1
     * @param degreesOfFreedom above zero, may be infinite; taken as they are, not truncated
     */
    public static double factor(double probability, double degreesOfFreedom) {
        requireProbability(probability);
        Input.requireDegreesOfFreedom(degreesOfFreedom);
        if (probability == TWO_SIGMA && degreesOfFreedom > AS_GOOD_AS_INFINITE) {
            return 2;
        }
        double tail = (1 - probability) / 2;
        return degreesOfFreedom > AS_GOOD_AS_INFINITE
                ? -new NormalDistribution(0, 1).inverseCumulativeProbability(tail)
                : -new TDistribution(degreesOfFreedom, QUANTILE_ACCURACY).inverseCumulativeProbability(tail);
    }

    /**
     * As {@link #factor}, with degrees of freedom truncated to the next lower integer, as the GUM does in H.1 and
     * G.6.4 allows. Below one they are left as they are: truncation would make them nothing.
     */
    public static double factorTruncated(double probability, double degreesOfFreedom) {
        return factor(probability, degreesOfFreedom < 1 ? degreesOfFreedom : Math.floor(degreesOfFreedom));
    }

    static void requireProbability(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("a coverage probability lies between 0 and 1, was " + probability);
        }
    }
}
