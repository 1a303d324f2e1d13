// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.conformity;

/**
 * How the measurement uncertainty is taken into account when conformity is stated; agreed before the work.
 *
 * <p>A rule has a guard band w = r·U on the inner side of each tolerance limit. The acceptance interval is the tolerance
 * less w on each side, ends included.
 *
 * @param outcomes how many answers the rule knows
 * @param guardFactor r, zero or more
 */
public record DecisionRule(Outcomes outcomes, double guardFactor) {
    /** What a rule can answer. */
    public enum Outcomes {
        /** Accepted or rejected at the tolerance limits; the guard band only marks errors that are close to them. */
        SIMPLE,
        /** Accepted within the acceptance interval, otherwise rejected. */
        GUARDED,
        /** Pass, conditional pass, conditional fail, fail. */
        FOUR
    }

    /** ILAC-G8:09/2019, 4.2.1; JCGM 106, 8.2. A false accept has a probability of up to one half. */
    public static final DecisionRule SIMPLE_ACCEPTANCE = new DecisionRule(Outcomes.SIMPLE, 1);

    /** ILAC-G8:09/2019, 4.2.2 with w = U; JCGM 106, 8.3.2. False accepts below 2.5 % for a normal distribution, k = 2. */
    public static final DecisionRule GUARD_BAND_U = new DecisionRule(Outcomes.GUARDED, 1);

    /** ILAC-G8:09/2019, 4.2.3 with w = U. */
    public static final DecisionRule FOUR_OUTCOMES = new DecisionRule(Outcomes.FOUR, 1);

    public DecisionRule {
        if (!(guardFactor >= 0) || Double.isInfinite(guardFactor)) {
            throw new IllegalArgumentException("a guard band is zero or more times U, was " + guardFactor + " U");
        }
    }

    /** Two outcomes with a guard band of r·U. */
    public static DecisionRule guardBand(double guardFactor) {
        return new DecisionRule(Outcomes.GUARDED, guardFactor);
    }
}
