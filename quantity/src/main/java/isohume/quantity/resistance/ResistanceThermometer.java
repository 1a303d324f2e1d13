// SPDX-License-Identifier: Apache-2.0
package isohume.quantity.resistance;

import isohume.quantity.Temperature;

/** A platinum thermometer by its own coefficients. */
public sealed interface ResistanceThermometer permits CallendarVanDusen, Its90 {
    /**
     * The temperature at which it has this resistance.
     *
     * @throws IllegalArgumentException beyond the range of its formula
     */
    Temperature at(double ohms);

    /**
     * Its resistance, in ohms.
     *
     * @throws IllegalArgumentException beyond the range of its formula
     */
    double ohms(Temperature temperature);
}
