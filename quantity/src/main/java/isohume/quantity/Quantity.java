// SPDX-License-Identifier: Apache-2.0
package isohume.quantity;

import java.util.Locale;

/** What a channel measures, with the one unit in which the program shows and records it. */
public enum Quantity {
    RELATIVE_HUMIDITY("% RH", "% RH"),
    TEMPERATURE("°C", "K"),
    /** Dew or frost point, according to the deposit that is recorded beside it. */
    DEW_POINT("°C", "K"),
    PRESSURE("Pa", "Pa"),
    /** Phase on a mirror: 1 liquid water, 2 ice; anything else is not known. */
    DEPOSIT("", ""),
    /** Water left in a chamber's tank. */
    WATER_LEVEL("%", "%");

    private final String unit;
    private final String differenceUnit;

    Quantity(String unit, String differenceUnit) {
        this.unit = unit;
        this.differenceUnit = differenceUnit;
    }

    /** The unit of a value; empty for a state. */
    public String unit() {
        return unit;
    }

    /** The unit of a difference of two values: an error, an uncertainty, a tolerance. */
    public String differenceUnit() {
        return differenceUnit;
    }

    /** The name in files: {@code relative_humidity}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The quantity with this {@link #key}. */
    public static Quantity ofKey(String key) {
        for (Quantity quantity : values()) {
            if (quantity.key().equals(key)) {
                return quantity;
            }
        }
        throw new IllegalArgumentException("no quantity is called " + key);
    }
}
