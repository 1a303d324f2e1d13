// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.util.function.DoubleSupplier;

/**
 * One thing that an instrument shows, and what only the bench knows about it.
 *
 * @param shown the value on its display, rounded to its last digit
 * @param trueValue what it should show where its sensor is
 * @param trueError what it would show beyond that once settled, without noise and rounding
 */
record Shown(DoubleSupplier shown, DoubleSupplier trueValue, DoubleSupplier trueError) {
    /** To the nearest whole multiple of a last digit; 0 leaves the value as it is. */
    static double rounded(double value, double resolution) {
        return resolution > 0 ? Math.rint(value / resolution) * resolution : value;
    }
}
