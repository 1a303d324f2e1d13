// SPDX-License-Identifier: Apache-2.0
package isohume.run.entry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Digits as people type them, with a point or a comma and either minus sign. */
final class TypedFigure {
    private static final Pattern FIGURE = Pattern.compile("[-+\u2212]?\\d{1,6}([.,]\\d{1,6})?");

    private TypedFigure() {}

    static boolean isFigure(String text) {
        return FIGURE.matcher(text).matches();
    }

    static BigDecimal value(String text) {
        return new BigDecimal(text.replace('\u2212', '-').replace(',', '.'));
    }

    static int decimals(String text) {
        return value(text).scale();
    }

    /** Every text that comes of it by exchanging two neighbouring digits, over the decimal sign too. */
    static List<String> withTwoDigitsSwapped(String text) {
        List<String> swapped = new ArrayList<>();
        for (int i = 0; i < text.length(); i++) {
            int next = i + 1 < text.length() && !Character.isDigit(text.charAt(i + 1)) ? i + 2 : i + 1;
            if (Character.isDigit(text.charAt(i)) && next < text.length() && text.charAt(i) != text.charAt(next)) {
                StringBuilder other = new StringBuilder(text);
                other.setCharAt(i, text.charAt(next));
                other.setCharAt(next, text.charAt(i));
                swapped.add(other.toString());
            }
        }
        return swapped;
    }
}
