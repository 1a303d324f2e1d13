// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands before the tenths of a number. */
public enum DecimalSign {
    POINT('.', ','),
    COMMA(',', '.');

    /** A number as some program wrote it, perhaps with its unit behind. */
    private static final Pattern WRITTEN = Pattern.compile(
            "([-+−]?)((?:\\d[\\d.,'\u00A0\u202F]*)|[.,]\\d+)([eE][-+]?\\d{1,2})?\\s*([°º℃℉%\\p{L}].{0,9})?");

    private final Pattern plain;
    private final Pattern grouped;
    private final char sign;

    DecimalSign(char sign, char group) {
        this.sign = sign;
        String tenths = "(?:\\" + sign + "\\d*)?";
        plain = Pattern.compile("\\d{1,18}" + tenths + "|\\" + sign + "\\d+");
        grouped = Pattern.compile("\\d{1,3}(?:[\\" + group + "'\u00A0\u202F]\\d{3})+" + tenths);
    }

    /**
     * The number, digit for digit.
     *
     * @param groups whether a sign between thousands is taken
     */
    Optional<BigDecimal> number(String cell, boolean groups) {
        Matcher written = WRITTEN.matcher(cell);
        if (!written.matches()) {
            return Optional.empty();
        }
        String digits = written.group(2);
        boolean fits = plain.matcher(digits).matches()
                || (groups && grouped.matcher(digits).matches());
        if (!fits) {
            return Optional.empty();
        }
        String point = digits.chars()
                .filter(c -> c == sign || Character.isDigit(c))
                .mapToObj(c -> c == sign ? "." : Character.toString(c))
                .reduce("", String::concat);
        String exponent = written.group(3) == null ? "" : written.group(3);
        String minus = "-−".contains(written.group(1)) && !written.group(1).isEmpty() ? "-" : "";
        return Optional.of(new BigDecimal(minus + point + (point.endsWith(".") ? "0" : "") + exponent));
    }

    /** A cell without the blanks around it, those that do not break among them. */
    static String bare(String cell) {
        return cell.strip().replaceAll("^[\u00A0\u202F\uFEFF]+|[\u00A0\u202F]+$", "");
    }

    /** Whether a cell is a number in some way of writing. */
    static boolean isNumber(String cell) {
        return WRITTEN.matcher(cell).matches();
    }

    /** The unit that stands behind a number in its cell. */
    static Optional<String> unitBehind(String cell) {
        Matcher written = WRITTEN.matcher(cell);
        return written.matches() ? Optional.ofNullable(written.group(4)).map(String::strip) : Optional.empty();
    }

    /**
     * Which sign a cell proves. A comma or point with other than three digits behind it cannot stand between
     * thousands; of two different signs the last one is the decimal sign.
     */
    static Optional<DecimalSign> provenBy(String cell) {
        Matcher written = WRITTEN.matcher(cell);
        if (!written.matches()) {
            return Optional.empty();
        }
        String digits = written.group(2);
        int point = digits.lastIndexOf('.');
        int comma = digits.lastIndexOf(',');
        if (point >= 0 && comma >= 0) {
            return Optional.of(point > comma ? POINT : COMMA);
        }
        int place = Math.max(point, comma);
        if (place < 0 || digits.indexOf(digits.charAt(place)) != place) {
            return Optional.empty();
        }
        int before = place;
        boolean thousands = digits.length() - place - 1 == 3 && before >= 1 && before <= 3 && digits.charAt(0) != '0';
        return thousands ? Optional.empty() : Optional.of(point >= 0 ? POINT : COMMA);
    }
}
