// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.DewPoint;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** The measures by which humid air is told, each in the unit in which the trade writes it. */
@SuppressWarnings("ImmutableEnumChecker") // the functions capture nothing
public enum HumidityMeasure {
    RELATIVE_HUMIDITY(
            "% RH",
            air -> air.relativeHumidity().percent(),
            (air, value) -> air.withRelativeHumidity(RelativeHumidity.ofPercent(value))),
    RELATIVE_HUMIDITY_OVER_ICE(
            "% RH",
            air -> air.relativeHumidityOverIce().percent(),
            (air, value) -> air.withRelativeHumidityOverIce(RelativeHumidity.ofPercent(value))),
    DEW_POINT(
            "°C",
            air -> air.dewPoint().celsius(),
            (air, value) -> air.withDewPoint(DewPoint.overWater(Temperature.ofCelsius(value)))),
    FROST_POINT(
            "°C",
            air -> air.frostPoint().celsius(),
            (air, value) -> air.withDewPoint(DewPoint.overIce(Temperature.ofCelsius(value)))),
    VAPOUR_PRESSURE(
            "Pa",
            air -> air.vapourPressure().pascals(),
            (air, value) -> air.withVapourPressure(Pressure.ofPascals(value))),
    /** To dry air. */
    MIXING_RATIO("g/kg", air -> air.mixingRatio() * 1e3, (air, value) -> air.withMixingRatio(value / 1e3)),
    /** To moist air. */
    SPECIFIC_HUMIDITY(
            "g/kg", air -> air.specificHumidity() * 1e3, (air, value) -> air.withSpecificHumidity(value / 1e3)),
    ABSOLUTE_HUMIDITY(
            "g/m³", air -> air.absoluteHumidity() * 1e3, (air, value) -> air.withAbsoluteHumidity(value / 1e3)),
    /** Of moist air. */
    VOLUME_FRACTION("ppmv", air -> air.volumeFraction() * 1e6, (air, value) -> air.withVolumeFraction(value / 1e6)),
    /** To dry air. */
    VOLUME_RATIO("ppmv", air -> air.volumeRatio() * 1e6, (air, value) -> air.withVolumeRatio(value / 1e6));

    private final String unit;
    private final ToDoubleFunction<HumidAir> answer;
    private final Telling telling;

    HumidityMeasure(String unit, ToDoubleFunction<HumidAir> answer, Telling telling) {
        this.unit = unit;
        this.answer = answer;
        this.telling = telling;
    }

    private interface Telling {
        HumidAir of(Surroundings surroundings, double value);
    }

    public String unit() {
        return unit;
    }

    /** The name in files and commands: {@code dew_point}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The measure of a state, in {@link #unit()}. */
    public double of(HumidAir air) {
        return answer.applyAsDouble(air);
    }

    /** The state that has a value of this measure, in {@link #unit()}. */
    public HumidAir in(Surroundings surroundings, double value) {
        return telling.of(surroundings, value);
    }
}
