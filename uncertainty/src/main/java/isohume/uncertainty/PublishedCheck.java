// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import java.util.function.DoubleSupplier;

/**
 * A published figure beside what this program finds for it.
 *
 * @param name what is checked
 * @param source publication and place
 * @param expected the figure, as published unless the name says otherwise
 * @param unit of the figures, "1" for a number
 * @param limit largest difference that is still agreement: half the last printed digit, or as the name says
 * @param found computes the figure when asked; may take up to a second
 */
public record PublishedCheck(
        String name, String source, double expected, String unit, double limit, DoubleSupplier found) {
    /** Whether a figure found agrees. */
    public boolean agrees(double figure) {
        return Math.abs(figure - expected) <= limit; // false for NaN
    }
}
