// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.comparison;

/** Scores for the agreement of a result with a reference, both with their uncertainties and independent. */
public final class Agreement {
    /** Up to this E_n, of either sign, two results agree. */
    public static final double LARGEST_SATISFACTORY_EN = 1;

    private Agreement() {}

    /**
     * E_n, from expanded uncertainties of the same coverage factor (ISO 13528). Between -1 and 1 the results agree.
     *
     * @throws IllegalArgumentException if both uncertainties are zero or one is negative
     */
    public static double en(double result, double expanded, double reference, double expandedReference) {
        return score(result, expanded, reference, expandedReference);
    }

    /** The zeta score, from standard uncertainties (ISO 13528): beyond 2 a warning, beyond 3 an alarm. */
    public static double zeta(double result, double standard, double reference, double standardReference) {
        return score(result, standard, reference, standardReference);
    }

    private static double score(double result, double u, double reference, double uReference) {
        double together = StrictMath.hypot(u, uReference);
        if (!(u >= 0 && uReference >= 0 && together > 0)) {
            throw new IllegalArgumentException(
                    "a score takes uncertainties of zero or more, not both zero, got " + u + " and " + uReference);
        }
        return (result - reference) / together;
    }
}
