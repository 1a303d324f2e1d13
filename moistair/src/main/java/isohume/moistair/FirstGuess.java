// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.Phase;

/**
 * Dew and frost point from the pure vapour pressure in closed form: where the solvers start, never a result.
 *
 * <p>Source: Hardy 1998, 3rd Int. Symp. on Humidity and Moisture, 214, inversions: {@code T/K = Σ c[i] x^i / Σ d[i]
 * x^i}, {@code x = ln(e/Pa)}; good to 0.3 mK against Hardy's own saturation formulas from -100 (frost) or 0 (dew) to
 * 100 °C (stated limit from memory), and to some tenths of a kelvin for every other formula and down to -50 °C.
 */
final class FirstGuess {
    private static final Cubic DEW = new Cubic(2.0798233e2, -2.0156028e1, 4.6778925e-1, -9.2288067e-6);
    private static final Cubic DEW_DIVISOR = new Cubic(1, -1.3319669e-1, 5.6577518e-3, -7.5172865e-5);
    private static final Cubic FROST = new Cubic(2.1257969e2, -1.0264612e1, 1.4354796e-1, 0);
    private static final Cubic FROST_DIVISOR = new Cubic(1, -8.2871619e-2, 2.3540411e-3, -2.4363951e-5);

    private FirstGuess() {}

    static double kelvin(double logPressure, Phase deposit) {
        return switch (deposit) {
            case WATER -> DEW.at(logPressure) / DEW_DIVISOR.at(logPressure);
            case ICE -> FROST.at(logPressure) / FROST_DIVISOR.at(logPressure);
        };
    }
}
