// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

/**
 * One line of a budget.
 *
 * @param symbol short and unique within its budget
 * @param description what it is, in words
 * @param estimate best estimate, in {@code unit}
 * @param unit as printed
 * @param distribution the state of knowledge about the estimate, in {@code unit}
 * @param degreesOfFreedom of the standard uncertainty, above zero; {@link Double#POSITIVE_INFINITY} is allowed
 * @param origin where the uncertainty comes from
 * @param evidence what a reviewer can look up; may be empty only in words, never absent
 */
public record Input(
        String symbol,
        String description,
        double estimate,
        String unit,
        Distribution distribution,
        double degreesOfFreedom,
        Origin origin,
        String evidence) {
    public Input {
        if (symbol.isBlank()) {
            throw new IllegalArgumentException("an input needs a symbol; its description is '" + description + "'");
        }
        if (!Double.isFinite(estimate)) {
            throw new IllegalArgumentException("the estimate of " + symbol + " must be finite, was " + estimate);
        }
        requireDegreesOfFreedom(degreesOfFreedom);
        double own = ownDegreesOfFreedom(distribution);
        if (Double.isFinite(own) && own != degreesOfFreedom) {
            throw new IllegalArgumentException("the distribution of " + symbol + " has " + own
                    + " degrees of freedom, the input says " + degreesOfFreedom);
        }
    }

    /** An input whose degrees of freedom follow from its distribution: infinite unless that says otherwise. */
    public static Input of(
            String symbol,
            String description,
            double estimate,
            String unit,
            Distribution distribution,
            Origin origin,
            String evidence) {
        double degreesOfFreedom = ownDegreesOfFreedom(distribution);
        return new Input(symbol, description, estimate, unit, distribution, degreesOfFreedom, origin, evidence);
    }

    /** The degrees of freedom of a standard uncertainty that is itself known to a relative part (GUM G.4.2): 1/(2r²). */
    public static double degreesOfFreedomFromReliability(double relativeUncertainty) {
        if (!(relativeUncertainty >= 0)) {
            throw new IllegalArgumentException("a relative uncertainty is zero or more, was " + relativeUncertainty);
        }
        return 0.5 / (relativeUncertainty * relativeUncertainty);
    }

    public double standardUncertainty() {
        return distribution.standardUncertainty();
    }

    static void requireDegreesOfFreedom(double degreesOfFreedom) {
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom must be above zero, were " + degreesOfFreedom);
        }
    }

    private static double ownDegreesOfFreedom(Distribution distribution) {
        return switch (distribution) {
            case Distribution.StudentT t -> t.degreesOfFreedom();
            case Distribution.MeanOfReadings mean -> mean.degreesOfFreedom();
            case Distribution.Normal n -> Double.POSITIVE_INFINITY;
            case Distribution.Expanded e -> Double.POSITIVE_INFINITY;
            case Distribution.Rectangular r -> Double.POSITIVE_INFINITY;
            case Distribution.Triangular t -> Double.POSITIVE_INFINITY;
            case Distribution.UShaped s -> Double.POSITIVE_INFINITY;
            case Distribution.Trapezoidal t -> Double.POSITIVE_INFINITY;
            case Distribution.InexactLimits c -> Double.POSITIVE_INFINITY;
        };
    }
}
