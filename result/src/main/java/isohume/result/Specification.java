// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.quantity.Phase;
import isohume.quantity.Quantity;
import java.util.Optional;

/**
 * What one channel of an instrument promises, and what has to be known to judge it.
 *
 * @param resolution the step of its last digit on the path that was read, in the quantity's unit; 0 for a channel that is
 *     derived, since those that it is derived from have one each
 * @param toleranceConstant a in ±(a + b·|reading|), in the quantity's difference unit
 * @param toleranceShare b in ±(a + b·|reading|), a plain number
 * @param toleranceFrom who agreed on it: maker, customer, process
 * @param belowZero what a dew point below 0 °C is over; empty for other quantities
 * @param derived whether its values are computed, instant by instant, from the {@link #parent} and the temperature that
 *     the same instrument shows
 */
public record Specification(
        Quantity quantity,
        double resolution,
        double toleranceConstant,
        double toleranceShare,
        String toleranceFrom,
        Optional<BelowZero> belowZero,
        boolean derived) {
    /** What is meant by a dew point below 0 °C. The two differ by about a tenth of it, so one of them is agreed on. */
    public enum BelowZero {
        /** Over water that stays liquid. */
        DEW,
        /** Over ice. */
        FROST
    }

    /** A channel that is read, other than a dew point. */
    public Specification(
            Quantity quantity,
            double resolution,
            double toleranceConstant,
            double toleranceShare,
            String toleranceFrom) {
        this(quantity, resolution, toleranceConstant, toleranceShare, toleranceFrom, Optional.empty(), false);
    }

    public Specification {
        boolean sound = derived ? resolution == 0 : resolution > 0;
        if (!sound || !(toleranceConstant >= 0) || !(toleranceShare >= 0)) {
            throw new IllegalArgumentException(
                    "resolution must be positive, or 0 if derived, and tolerances not negative"
                            + " for " + quantity.key() + ", were " + resolution + ", " + toleranceConstant + ", "
                            + toleranceShare);
        }
        if (belowZero.isPresent() != (quantity == Quantity.DEW_POINT)) {
            throw new IllegalArgumentException("a dew point, and nothing else, says what it is below 0 °C; "
                    + quantity.key() + " says " + belowZero);
        }
        if (derived && quantity != Quantity.DEW_POINT && quantity != Quantity.RELATIVE_HUMIDITY) {
            throw new IllegalArgumentException(quantity.key() + " cannot be derived");
        }
    }

    /** The quantity that it is derived from together with a temperature. */
    public Quantity parent() {
        return quantity == Quantity.DEW_POINT ? Quantity.RELATIVE_HUMIDITY : Quantity.DEW_POINT;
    }

    /** The phase that a dew point of this channel is over. */
    Phase over(double celsius) {
        return belowZero.equals(Optional.of(BelowZero.FROST)) && celsius < 0 ? Phase.ICE : Phase.WATER;
    }

    /** The tolerance's half-width at a reading. */
    public double toleranceAt(double reading) {
        return toleranceConstant + toleranceShare * Math.abs(reading);
    }
}
