// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What a conversion gives, in the unit and with the decimals in which the trade writes it. */
public enum Measure {
    /** Over liquid water at every temperature. */
    RELATIVE_HUMIDITY("% RH", "% RH", 2, true),
    /** Over ice; the air is not warmer than 0.01 °C. */
    RELATIVE_HUMIDITY_OVER_ICE("% RH", "% RH", 2, true),
    /** Over liquid water, supercooled below 0 °C. */
    DEW_POINT("°C", "K", 3, true),
    /** Over ice. */
    FROST_POINT("°C", "K", 3, true),
    /** Of the wet bulb of an aspirated psychrometer. */
    WET_BULB("°C", "K", 3, true),
    /** Partial pressure of the vapour in this air. */
    VAPOUR_PRESSURE("Pa", "Pa", 2, true),
    /** Water per dry air. */
    MIXING_RATIO("g/kg", "g/kg", 4, true),
    /** Water per moist air. */
    SPECIFIC_HUMIDITY("g/kg", "g/kg", 4, true),
    /** Water per volume of moist air. */
    ABSOLUTE_HUMIDITY("g/m³", "g/m³", 4, true),
    /** Amount of water per amount of moist air. */
    VOLUME_FRACTION("ppmv", "ppmv", 1, true),
    /** Amount of water per amount of dry air. */
    VOLUME_RATIO("ppmv", "ppmv", 1, true),
    /** Per dry air, zero for dry air at 0 °C. */
    ENTHALPY("kJ/kg", "kJ/kg", 3, false),
    /** Of the moist air. */
    DENSITY("kg/m³", "kg/m³", 5, false),
    /** Of pure water substance over liquid water, at the air's temperature. */
    SATURATION_PRESSURE("Pa", "Pa", 2, false),
    /** By which air raises the saturation pressure, at the air's temperature and pressure. */
    ENHANCEMENT_FACTOR("", "", 5, false);

    private final String unit;
    private final String differenceUnit;
    private final int decimals;
    private final boolean tellsTheVapour;

    Measure(String unit, String differenceUnit, int decimals, boolean tellsTheVapour) {
        this.unit = unit;
        this.differenceUnit = differenceUnit;
        this.decimals = decimals;
        this.tellsTheVapour = tellsTheVapour;
    }

    /** Those of which one, beside temperature and pressure, tells all others. */
    public static List<Measure> ofHumidity() {
        return Arrays.stream(values()).filter(m -> m.tellsTheVapour).toList();
    }

    /** The name in files and in JSON: {@code relative_humidity}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The name in a sentence: {@code relative humidity}. */
    public String words() {
        return key().replace('_', ' ');
    }

    /** Empty for a plain number. */
    public String unit() {
        return unit;
    }

    /** The unit of a difference and of an uncertainty. */
    public String differenceUnit() {
        return differenceUnit;
    }

    /** How many decimals a person is shown. */
    public int decimals() {
        return decimals;
    }
}
