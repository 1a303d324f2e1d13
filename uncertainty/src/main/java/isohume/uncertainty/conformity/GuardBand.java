// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.conformity;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Guard bands w = r·U and the risk that goes with them, for one limit, a normal distribution and U = 2u.
 *
 * @param name what the choice is called
 * @param factor r
 * @param riskBound the probability of a false accept is below this, as stated by the source
 * @param source where the pair is stated
 */
public record GuardBand(String name, double factor, double riskBound, String source) {
    private static final double U_OVER_STANDARD = 2;
    private static final String G8 = "ILAC-G8:09/2019, table 1, as repeated in public";

    /** The choices ILAC-G8 lists, by falling guard band. */
    public static List<GuardBand> table() {
        return List.of(
                new GuardBand("six sigma", 3, 1e-6, G8),
                new GuardBand("three sigma", 1.5, 0.0016, G8),
                new GuardBand("guard band U", 1, 0.025, G8),
                new GuardBand("ISO 14253-1", 0.83, 0.05, G8),
                new GuardBand("simple acceptance", 0, 0.5, "ILAC-G8:09/2019, 4.2.1"));
    }

    /** The probability that an item whose measured value lies on the acceptance limit is outside the tolerance. */
    public static double falseAcceptAtLimit(double factor) {
        return new NormalDistribution(0, 1).cumulativeProbability(-U_OVER_STANDARD * factor);
    }

    /** The factor r for which a value on the acceptance limit is outside the tolerance with a given probability. */
    public static double factorFor(double falseAcceptProbability) {
        if (!(falseAcceptProbability > 0 && falseAcceptProbability <= 0.5)) {
            throw new IllegalArgumentException(
                    "a tolerated false accept has a probability above 0 up to 0.5, was " + falseAcceptProbability);
        }
        return -new NormalDistribution(0, 1).inverseCumulativeProbability(falseAcceptProbability) / U_OVER_STANDARD;
    }

    public DecisionRule rule() {
        return DecisionRule.guardBand(factor);
    }
}
