// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import io.quarkus.qute.TemplateData;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A number as it is shown: a true minus sign, thin spaces between thousands, and its two sides apart so that a column
 * can be aligned on the decimal mark.
 *
 * @param whole the side left of the mark, with the sign
 * @param fraction the mark and what follows, or empty
 */
@TemplateData
public record Figure(String whole, String fraction) {
    private static final String THIN_SPACE = "\u2009";
    private static final String NO_VALUE = "–";

    /** Rounded half to even to a number of decimals. A number that is not finite is a dash. */
    public static Figure of(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return new Figure(NO_VALUE, "");
        }
        return of(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /** With the digits it has. */
    public static Figure of(BigDecimal value) {
        String digits = value.abs().toPlainString();
        int mark = digits.indexOf('.');
        String whole = mark < 0 ? digits : digits.substring(0, mark);
        return new Figure((value.signum() < 0 ? "−" : "") + grouped(whole), mark < 0 ? "" : digits.substring(mark));
    }

    /** With its sign always, as errors and corrections are shown. */
    public static Figure signed(double value, int decimals) {
        Figure plain = of(value, decimals);
        boolean shown = Double.isFinite(value)
                && new BigDecimal(value)
                                .setScale(decimals, RoundingMode.HALF_EVEN)
                                .signum()
                        > 0;
        return shown ? new Figure("+" + plain.whole, plain.fraction) : plain;
    }

    private static String grouped(String whole) {
        if (whole.length() <= 4) {
            return whole;
        }
        StringBuilder out = new StringBuilder(whole);
        for (int i = whole.length() - 3; i > 0; i -= 3) {
            out.insert(i, THIN_SPACE);
        }
        return out.toString();
    }

    @Override
    public String toString() {
        return whole + fraction;
    }
}
