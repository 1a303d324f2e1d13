// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How figures are set: a true minus, no minus before zero, a thin space that does not break before the unit. */
final class Figures {
    static final char MINUS = '\u2212';
    static final char THIN = '\u202F';
    static final char NO_BREAK = '\u00A0';
    /** What stands where there is no figure. */
    static final String NOTHING = "\u2013";

    private Figures() {}

    static String of(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return NOTHING;
        }
        return of(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /** All digits that the number has. */
    static String of(BigDecimal rounded) {
        String digits = rounded.abs().toPlainString();
        return rounded.signum() < 0 ? MINUS + digits : digits;
    }

    /** As many decimals as the value has, at most {@code most}: for figures that somebody agreed on. */
    static String brief(double value, int most) {
        if (!Double.isFinite(value)) {
            return NOTHING;
        }
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(most, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return of(value, Math.max(0, rounded.scale()));
    }

    static String withUnit(String figure, String unit) {
        return unit.isEmpty() ? figure : figure + THIN + unit(unit);
    }

    /** A unit whose words stay together. */
    static String unit(String unit) {
        return unit.replace(' ', NO_BREAK);
    }

    /** Digits behind the decimal mark of a figure as printed. */
    static int decimalsOf(String figure) {
        int mark = figure.indexOf('.');
        return mark < 0 ? 0 : figure.length() - mark - 1;
    }
}
