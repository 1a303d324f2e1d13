// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

import java.util.Locale;

/** What a conversion gives. */
public enum Measure {
    /** Over liquid water at every temperature. */
    RELATIVE_HUMIDITY("% RH", 2),
    /** Over liquid water, supercooled below 0 °C. */
    DEW_POINT("°C", 3),
    /** Over ice. */
    FROST_POINT("°C", 3),
    /** Partial pressure of the vapour in this air. */
    VAPOUR_PRESSURE("Pa", 2),
    /** Of pure water substance over liquid water, at the air's temperature. */
    SATURATION_PRESSURE("Pa", 2),
    /** By which air raises the saturation pressure, at the air's temperature and pressure. */
    ENHANCEMENT_FACTOR("", 5),
    /** Water per dry air. */
    MIXING_RATIO("g/kg", 4),
    /** Water per volume of humid air, as an ideal gas. */
    ABSOLUTE_HUMIDITY("g/m³", 4);

    private final String unit;
    private final int decimals;

    Measure(String unit, int decimals) {
        this.unit = unit;
        this.decimals = decimals;
    }

    /** The name in files and in JSON: {@code relative_humidity}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Empty for a plain number. */
    public String unit() {
        return unit;
    }

    /** How many decimals a person is shown. */
    public int decimals() {
        return decimals;
    }
}
