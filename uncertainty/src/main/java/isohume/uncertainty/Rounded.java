// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A result and its expanded uncertainty as printed: the uncertainty to one or two significant digits, the value to the
 * same place.
 *
 * <p>Source: GUM 7.2.6. The uncertainty goes to the nearest digit, but up if that would lower it by more than 5 %
 * (EA-4/02 6.3, from memory). Ties go to the even digit (ISO 80000-1, annex B, rule A; from memory). Decide on
 * conformity before rounding, never after.
 *
 * @param value in the unit of the result
 * @param uncertainty in the same unit, same number of decimals
 */
public record Rounded(BigDecimal value, BigDecimal uncertainty) {
    private static final int USUAL_DIGITS = 2;
    private static final BigDecimal LARGEST_CUT = new BigDecimal("0.05");

    /** Rounds to two significant digits of the uncertainty. */
    public static Rounded of(double value, double uncertainty) {
        return of(value, uncertainty, USUAL_DIGITS);
    }

    /**
     * Rounds to one or two significant digits of the uncertainty.
     *
     * @throws IllegalArgumentException if the value is not finite, the uncertainty not above zero, or other digits asked
     */
    public static Rounded of(double value, double uncertainty, int digits) {
        if (digits < 1 || digits > 2) {
            throw new IllegalArgumentException("an uncertainty is printed to one or two digits, was asked " + digits);
        }
        if (!(uncertainty > 0) || !Double.isFinite(uncertainty) || !Double.isFinite(value)) {
            throw new IllegalArgumentException("cannot round " + value + " ± " + uncertainty
                    + ": the value must be finite and the uncertainty above zero");
        }
        BigDecimal exact = BigDecimal.valueOf(uncertainty);
        BigDecimal rounded = significant(exact, digits);
        int place = rounded.scale();
        return new Rounded(plain(BigDecimal.valueOf(value).setScale(place, RoundingMode.HALF_EVEN)), plain(rounded));
    }

    private static BigDecimal significant(BigDecimal exact, int digits) {
        BigDecimal nearest = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
        boolean cutsTooMuch = exact.subtract(nearest).compareTo(exact.multiply(LARGEST_CUT)) > 0;
        BigDecimal rounded = cutsTooMuch ? exact.round(new MathContext(digits, RoundingMode.UP)) : nearest;
        int missing = digits - rounded.precision(); // 0.4 has one digit, its second is a zero worth printing
        return rounded.setScale(rounded.scale() + missing, RoundingMode.UNNECESSARY);
    }

    private static BigDecimal plain(BigDecimal number) {
        return number.scale() < 0 ? number.setScale(0, RoundingMode.UNNECESSARY) : number;
    }

    @Override
    public String toString() {
        return value.toPlainString() + " ± " + uncertainty.toPlainString();
    }
}
