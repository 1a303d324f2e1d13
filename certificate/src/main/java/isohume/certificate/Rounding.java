// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.uncertainty.Rounded;

/**
 * The decimal place at which a result is printed: the second significant digit of its expanded uncertainty, and the
 * same place for the value, as {@link Rounded} has it (GUM 7.2.6).
 *
 * @param expanded unrounded, above 0
 */
record Rounding(double expanded) {
    /** Digits after the decimal mark. */
    int decimals() {
        return Math.max(0, Rounded.of(0, expanded).uncertainty().scale());
    }

    /** U itself. */
    String print() {
        return Figures.of(Rounded.of(0, expanded).uncertainty());
    }

    /** A value at the place of U, with a true minus sign. */
    String print(double value) {
        return Figures.of(Rounded.of(value, expanded).value());
    }

    /** The same with a sign in front of a positive value too. */
    String printSigned(double value) {
        String text = print(value);
        return Rounded.of(value, expanded).value().signum() > 0 ? "+" + text : text;
    }
}
