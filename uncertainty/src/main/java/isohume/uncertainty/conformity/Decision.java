// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.conformity;

/**
 * A statement of conformity and all it rests on, unrounded and in the unit of the error.
 *
 * @param acceptanceLower lower acceptance limit; above {@code acceptanceUpper} when U leaves nothing to accept
 * @param conformanceProbability that the true error lies within the tolerance, for a normal distribution of standard
 *     deviation U/k (JCGM 106, 7.2)
 */
public record Decision(
        double error,
        double expanded,
        double coverageFactor,
        Tolerance tolerance,
        DecisionRule rule,
        Verdict verdict,
        double acceptanceLower,
        double acceptanceUpper,
        double conformanceProbability) {
    /** Whether any error at all could be accepted with this uncertainty. */
    public boolean acceptanceIsPossible() {
        return acceptanceLower <= acceptanceUpper;
    }

    /** The specific consumer's risk (JCGM 106, 9.4.2): that this accepted item is outside its tolerance; else zero. */
    public double falseAcceptProbability() {
        return verdict.isAccepted() ? 1 - conformanceProbability : 0;
    }

    /** The specific producer's risk (JCGM 106, 9.4.3): that this rejected item is within its tolerance; else zero. */
    public double falseRejectProbability() {
        return verdict.isAccepted() ? 0 : conformanceProbability;
    }
}
