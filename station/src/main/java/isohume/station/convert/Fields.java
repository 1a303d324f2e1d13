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

    /** A temperature in °C. */
    Typed temperature(String field) {
        Typed celsius = number(field);
        try {
            Temperature unused = Temperature.ofCelsius(celsius.value());
            return celsius;
        } catch (IllegalArgumentException impossible) {
            throw new NotUnderstood(
                    field,
                    "the " + words(field) + " was " + celsius.value() + " °C, below absolute zero; "
                            + "check the sign and the unit",
                    impossible);
        }
    }

    /** A finite number, perhaps with its uncertainty behind ± or +-; decimal commas and true minus signs are understood. */
    Typed number(String field) {
        String text = text(field);
        if (text.isEmpty()) {
            throw new NotUnderstood(field, "no " + words(field) + " was given; give a number");
        }
        String[] sides = text.replace("+-", "±").replace("+/-", "±").split("±", 2);
        double value = number(field, sides[0].strip());
        double expanded = sides.length == 1 ? 0 : number(field, sides[1].strip());
        if (!(expanded >= 0)) {
            throw new NotUnderstood(field, "the uncertainty of the " + words(field) + " was negative; give U at k = 2");
        }
        return new Typed(value, expanded);
    }

    private static double number(String field, String text) {
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
