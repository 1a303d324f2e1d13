// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

import isohume.quantity.Temperature;
import java.math.BigDecimal;
import java.util.Map;

/** What was typed, by field. */
record Fields(Map<String, String> typed) {
    private static final int LONGEST = 40; // no figure is longer, and none longer is worth reading

    boolean given(String field) {
        return !text(field).isEmpty();
    }

    String text(String field) {
        return typed.getOrDefault(field, "").strip();
    }

    Temperature temperature(String field) {
        double celsius = number(field);
        try {
            return Temperature.ofCelsius(celsius);
        } catch (IllegalArgumentException impossible) {
            throw new NotUnderstood(
                    field,
                    "the " + words(field) + " was " + celsius + " °C, below absolute zero; "
                            + "check the sign and the unit",
                    impossible);
        }
    }

    /** A finite number; a decimal comma and a true minus sign are understood. */
    double number(String field) {
        String text = text(field);
        if (text.isEmpty()) {
            throw new NotUnderstood(field, "no " + words(field) + " was given; give a number");
        }
        String plain = text.replace('−', '-').replace(',', '.');
        try {
            if (plain.length() <= LONGEST) {
                double number = new BigDecimal(plain).doubleValue();
                if (Double.isFinite(number)) {
                    return number;
                }
            }
        } catch (NumberFormatException notOne) {
            throw new NotUnderstood(field, notNumber(field, text), notOne);
        }
        throw new NotUnderstood(field, notNumber(field, text.substring(0, Math.min(LONGEST, text.length()))));
    }

    private static String notNumber(String field, String text) {
        return "the " + words(field) + " was “" + text + "”, which is not a number; give one such as 23.5";
    }

    private static String words(String field) {
        return field.replace('_', ' ');
    }
}
