// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.Unit;
import isohume.quantity.Quantity;

/**
 * A column of readings.
 *
 * @param number in the file, from 1
 * @param heading as in the file; empty if it has none
 * @param channel the quantity's key, perhaps with something after it, or {@code mirror_pressure}
 * @param unit that the file gives the values in
 */
public record LoggedColumn(int number, String heading, String channel, Quantity quantity, Unit unit) {
    /** The name and the unit as in files of readings: {@code temperature [°C]}. */
    public String title() {
        return unit == Unit.NONE ? channel : channel + " [" + unit.symbol() + "]";
    }
}
