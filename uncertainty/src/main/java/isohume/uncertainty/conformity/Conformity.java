// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.conformity;

import java.math.BigDecimal;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Decides on conformity.
 *
 * <p>Limits are formed and compared in decimal arithmetic on the shortest decimal form of each number, so that
 * 0.3 - 0.1 is 0.2 and the answer is the one a reader of the printed figures gets with unrounded ones.
 */
public final class Conformity {
    private Conformity() {}

    /**
     * Decides on one error of indication.
     *
     * @param error reading minus reference, unrounded
     * @param expanded U, zero or more, unrounded, in the same unit
     * @param coverageFactor k of U, 1 or more
     */
    public static Decision decide(
            double error, double expanded, double coverageFactor, Tolerance tolerance, DecisionRule rule) {
        if (!Double.isFinite(error)) {
            throw new IllegalArgumentException("the error must be finite, was " + error);
        }
        if (!(expanded >= 0) || Double.isInfinite(expanded) || !(coverageFactor >= 1)) {
            throw new IllegalArgumentException(
                    "U must be zero or more and k at least 1, were U " + expanded + ", k " + coverageFactor);
        }
        double guard = rule.outcomes() == DecisionRule.Outcomes.SIMPLE ? 0 : rule.guardFactor() * expanded;
        return new Decision(
                error,
                expanded,
                coverageFactor,
                tolerance,
                rule,
                verdict(error, expanded, tolerance, rule),
                inward(tolerance.lower(), guard),
                -inward(-tolerance.upper(), guard),
                probability(error, expanded / coverageFactor, tolerance));
    }

    /** The probability that a value with this standard uncertainty lies within the tolerance (JCGM 106, 7.2). */
    public static double probability(double value, double standardUncertainty, Tolerance tolerance) {
        if (standardUncertainty == 0) {
            return tolerance.holds(value) ? 1 : 0;
        }
        double below = phi((tolerance.lower() - value) / standardUncertainty);
        double above = phi((value - tolerance.upper()) / standardUncertainty);
        return Math.max(0, 1 - below - above);
    }

    private static Verdict verdict(double error, double expanded, Tolerance tolerance, DecisionRule rule) {
        BigDecimal guard = BigDecimal.valueOf(rule.guardFactor()).multiply(BigDecimal.valueOf(expanded));
        boolean inTolerance = within(error, tolerance, BigDecimal.ZERO);
        boolean inGuarded = within(error, tolerance, guard);
        return switch (rule.outcomes()) {
            case SIMPLE ->
                !inTolerance ? Verdict.DOES_NOT_CONFORM : inGuarded ? Verdict.CONFORMS : Verdict.CONFORMS_IN_GUARD_BAND;
            case GUARDED -> inGuarded ? Verdict.CONFORMS : Verdict.DOES_NOT_CONFORM;
            case FOUR ->
                inGuarded
                        ? Verdict.CONFORMS
                        : inTolerance
                                ? Verdict.CONFORMS_IN_GUARD_BAND
                                : within(error, tolerance, guard.negate())
                                        ? Verdict.NOT_DECIDED
                                        : Verdict.DOES_NOT_CONFORM;
        };
    }

    /** Whether the error lies inside the tolerance by at least a margin; a negative margin reaches outside. */
    private static boolean within(double error, Tolerance tolerance, BigDecimal margin) {
        BigDecimal e = BigDecimal.valueOf(error);
        boolean aboveLower = Double.isInfinite(tolerance.lower())
                || e.compareTo(BigDecimal.valueOf(tolerance.lower()).add(margin)) >= 0;
        boolean belowUpper = Double.isInfinite(tolerance.upper())
                || e.compareTo(BigDecimal.valueOf(tolerance.upper()).subtract(margin)) <= 0;
        return aboveLower && belowUpper;
    }

    private static double inward(double lower, double guard) {
        return Double.isInfinite(lower)
                ? lower
                : BigDecimal.valueOf(lower).add(BigDecimal.valueOf(guard)).doubleValue();
    }

    private static double phi(double z) {
        return new NormalDistribution(0, 1).cumulativeProbability(z);
    }
}
