// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The decimal place at which a result is printed: the second significant digit of its expanded uncertainty, and the
 * same place for the value (GUM 7.2.6).
 *
 * @param decimals places after the decimal mark; negative for tens and more
 */
record Rounding(int decimals) {
    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_UP);

    static Rounding to(double expanded) {
        if (!(expanded > 0) || Double.isInfinite(expanded)) {
            throw new IllegalArgumentException(
                    "an expanded uncertainty must be finite and above 0 to be printed, was " + expanded);
        }
        BigDecimal rounded = BigDecimal.valueOf(expanded).round(TWO_DIGITS);
        return new Rounding(2 - rounded.precision() + rounded.scale());
    }

    /** The value at this place, with a true minus sign. */
    String print(double value) {
        return Figures.of(value, decimals);
    }

    /** The same with a sign in front of a positive value too. */
    String printSigned(double value) {
        String text = print(value);
        return value > 0 && text.chars().anyMatch(c -> c >= '1' && c <= '9') ? "+" + text : text;
    }
}
