// SPDX-License-Identifier: Apache-2.0
package isohume.quantity;

import java.util.function.DoubleSupplier;

/**
 * A figure that somebody else published, with our own beside it: evidence that anybody can recompute.
 *
 * @param what the figure in words, with its conditions
 * @param source where it is printed, or by what independent means it was computed
 * @param expected the published figure
 * @param unit unit of the figure; empty for a ratio
 * @param limit largest difference that still counts as agreement, in the same unit
 * @param found computes our figure now, on this machine
 */
public record PublishedCheck(
        String what, String source, double expected, String unit, double limit, DoubleSupplier found) {
    public PublishedCheck {
        if (!(limit >= 0) || !Double.isFinite(expected)) {
            throw new IllegalArgumentException(
                    "a published check needs a finite figure and a limit, had " + expected + " and " + limit);
        }
    }

    /** Our figure minus the published one. */
    public double deviation() {
        return found.getAsDouble() - expected;
    }

    /** Whether our figure agrees. */
    public boolean holds() {
        return Math.abs(deviation()) <= limit; // false for NaN
    }
}
