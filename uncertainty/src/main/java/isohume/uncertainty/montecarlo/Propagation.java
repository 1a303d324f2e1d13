// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import isohume.uncertainty.Budget;

/**
 * What a Monte Carlo run found, beside the budget it checks; figures in the measurand's unit.
 *
 * @param trials model values the figures rest on
 * @param refusedTrials draws the model had no value for; left out, and worth a look when not zero
 * @param settled whether the numerical tolerance was reached before the most trials were
 * @param value mean of the model values
 * @param standardUncertainty their standard deviation
 * @param symmetric probabilistically symmetric interval for the budget's coverage probability
 * @param shortest shortest interval for the same
 * @param tolerance numerical tolerance δ of the standard uncertainty, by which both methods are compared; of the smaller
 *     one, since a t of few degrees of freedom has no standard deviation and its draws may give any
 */
public record Propagation(
        Budget budget,
        Settings settings,
        int trials,
        int refusedTrials,
        boolean settled,
        double value,
        double standardUncertainty,
        Interval symmetric,
        Interval shortest,
        double tolerance) {
    /** The interval of the kind asked for. */
    public Interval found() {
        return switch (settings.kind()) {
            case SYMMETRIC -> symmetric;
            case SHORTEST -> shortest;
        };
    }

    /** By how much the lower end of the budget's interval differs (JCGM 101, 8.1). */
    public double lowDifference() {
        return Math.abs(budget.value() - budget.expanded() - found().low());
    }

    /** By how much the upper end of the budget's interval differs (JCGM 101, 8.1). */
    public double highDifference() {
        return Math.abs(budget.value() + budget.expanded() - found().high());
    }

    /** Whether the budget is validated: both ends agree to the tolerance (JCGM 101, 8.1). */
    public boolean validatesBudget() {
        return lowDifference() <= tolerance && highDifference() <= tolerance;
    }

    /** The interval to report: the budget's if it is validated, otherwise the one found here. */
    public Interval reported() {
        return validatesBudget()
                ? new Interval(budget.value() - budget.expanded(), budget.value() + budget.expanded())
                : found();
    }

    /**
     * The expanded uncertainty to report: the budget's U if it is validated, otherwise the least one with which
     * {@code y ± U} holds the interval found here. That may be less than the budget's, where a rectangular part is large.
     */
    public double expanded() {
        return validatesBudget()
                ? budget.expanded()
                : Math.max(budget.value() - found().low(), found().high() - budget.value());
    }

    /** What belongs to {@link #expanded}: the budget's k, or how many of its standard uncertainties it is. */
    public double coverageFactor() {
        return validatesBudget() ? budget.coverageFactor() : expanded() / budget.combined();
    }

    /** The comparison in words, for a record or a page. */
    public String words() {
        String verdict = validatesBudget()
                ? "validates the budget"
                : "does not agree with the budget; the interval of the Monte Carlo method is reported";
        String settling = settled ? "" : " It had not settled to its tolerance.";
        String refused = refusedTrials == 0 ? "" : " The model had no value for " + refusedTrials + " further trials.";
        return "Monte Carlo with " + trials + " trials, seed " + settings.seed() + ", " + verdict
                + " (ends differ by " + lowDifference() + " and " + highDifference() + " " + budget.unit()
                + ", tolerance " + tolerance + ")." + settling + refused;
    }
}
