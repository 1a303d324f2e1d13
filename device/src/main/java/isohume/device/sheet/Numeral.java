// SPDX-License-Identifier: Apache-2.0
package isohume.device.sheet;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** How a number is written: decimal digits with a point, perhaps a power of ten; 30 digits and 10^±30 at most. */
final class Numeral {
    private static final Pattern NUMBER =
            Pattern.compile("[-+]?(\\d{1,30}(\\.\\d{0,30})?|\\.\\d{1,30})([eE][-+]?\\d{1,2})?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[-+]?\\d+,\\d+([eE][-+]?\\d+)?");
    private static final Pattern WHOLE = Pattern.compile("[-+]?(0|[1-9]\\d{0,17})");
    private static final Pattern NOT_A_NUMBER =
            Pattern.compile("[-+]?\\.?(nan|inf|infinity|∞)", Pattern.CASE_INSENSITIVE);

    private Numeral() {}

    static boolean isNumber(String text) {
        return NUMBER.matcher(text).matches() && Math.abs(exponent(text)) <= 30;
    }

    static boolean isWhole(String text) {
        return WHOLE.matcher(text).matches();
    }

    static BigDecimal number(String text) {
        return new BigDecimal(text.endsWith(".") ? text + "0" : text);
    }

    /** What to write instead of a text that is not a number; {@code needed} names what belongs there. */
    static String remedy(String text, String needed) {
        if (DECIMAL_COMMA.matcher(text).matches()) {
            return "write the decimal point as a point: " + text.replace(',', '.');
        }
        if (NOT_A_NUMBER.matcher(text).matches()) {
            return needed + " is needed here, and a finite one";
        }
        return needed + " is needed here";
    }

    private static int exponent(String text) {
        int e = Math.max(text.indexOf('e'), text.indexOf('E'));
        return e < 0 ? 0 : Integer.parseInt(text.substring(e + 1));
    }
}
