// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.quantity.Quantity;

/**
 * What one channel of an instrument promises, and what has to be known to judge it.
 *
 * @param resolution the step of its last digit on the path that was read, in the quantity's unit; never 0
 * @param toleranceConstant a in ±(a + b·|reading|), in the quantity's difference unit
 * @param toleranceShare b in ±(a + b·|reading|), a plain number
 * @param toleranceFrom who agreed on it: maker, customer, process
 */
public record Specification(
        Quantity quantity, double resolution, double toleranceConstant, double toleranceShare, String toleranceFrom) {
    public Specification {
        if (!(resolution > 0) || !(toleranceConstant >= 0) || !(toleranceShare >= 0)) {
            throw new IllegalArgumentException("resolution must be positive and tolerances not negative for "
                    + quantity.key() + ", were " + resolution + ", " + toleranceConstant + ", " + toleranceShare);
        }
    }

    /** The tolerance's half-width at a reading. */
    public double toleranceAt(double reading) {
        return toleranceConstant + toleranceShare * Math.abs(reading);
    }
}
