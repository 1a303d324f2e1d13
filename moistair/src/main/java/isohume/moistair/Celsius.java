// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.Temperature;

/** Degrees Celsius inside formulas that are printed in them. */
final class Celsius {
    /** 0 °C in kelvin. */
    static final double ZERO = Temperature.ofCelsius(0).kelvin();

    private Celsius() {}

    static double of(double kelvin) {
        return kelvin - ZERO;
    }
}
