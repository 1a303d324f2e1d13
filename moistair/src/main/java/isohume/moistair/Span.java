// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.quantity.Temperature;

/** The temperatures, in degrees Celsius, for which a formula's source vouches; both ends belong to it. */
record Span(String what, double lowest, double highest) {
    private static final double ROUNDING = 1e-9; // K; a value converted to kelvin and back is still inside

    /** The same temperature in kelvin, or {@link OutsideRange}. */
    @CanIgnoreReturnValue
    double require(Temperature t) {
        double celsius = t.celsius();
        if (!(celsius >= lowest - ROUNDING && celsius <= highest + ROUNDING)) {
            throw new OutsideRange(what, celsius, lowest, highest, "°C");
        }
        return t.kelvin();
    }
}
