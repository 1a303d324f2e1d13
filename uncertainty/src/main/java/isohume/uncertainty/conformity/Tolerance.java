// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.conformity;

/**
 * The interval of permissible values, both limits included (JCGM 106, 3.3.4 and 3.3.5).
 *
 * @param lower may be negative infinity: no lower limit
 * @param upper may be positive infinity: no upper limit; above {@code lower}
 */
public record Tolerance(double lower, double upper) {
    public Tolerance {
        if (!(lower < upper)) {
            throw new IllegalArgumentException(
                    "the lower tolerance limit must be below the upper one, were " + lower + " and " + upper);
        }
        if (Double.isInfinite(lower) && Double.isInfinite(upper)) {
            throw new IllegalArgumentException("a tolerance needs at least one finite limit");
        }
    }

    /** From -limit to +limit, as for an error of indication. */
    public static Tolerance symmetric(double limit) {
        return new Tolerance(-limit, limit);
    }

    public static Tolerance atMost(double upper) {
        return new Tolerance(Double.NEGATIVE_INFINITY, upper);
    }

    public static Tolerance atLeast(double lower) {
        return new Tolerance(lower, Double.POSITIVE_INFINITY);
    }

    public boolean holds(double value) {
        return value >= lower && value <= upper;
    }
}
