// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

import isohume.moistair.Formulation;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Humid air, told by its temperature, one measure of its humidity and its pressure. */
public record Question(Temperature temperature, Humidity humidity, Pressure pressure, Formulation formulation) {
    public static final String TEMPERATURE = "temperature";
    public static final String DEW_POINT = "dew_point";
    public static final String FROST_POINT = "frost_point";
    public static final String RELATIVE_HUMIDITY = "relative_humidity";
    public static final String PRESSURE = "pressure";
    public static final String PHASE = "phase";
    public static final String FORMULATION = "formulation";

    /** The keys of which exactly one must be given. */
    public static final List<String> HUMIDITIES = List.of(DEW_POINT, FROST_POINT, RELATIVE_HUMIDITY);

    /** What is meant when no formulation is named. */
    public static final Formulation USUAL = Formulation.SONNTAG_1990;

    // Greenspan 1976 gives his enhancement factors from 0.1 to 20 standard atmospheres (range from memory)
    private static final double LOWEST_PASCALS = 10_000;
    private static final double HIGHEST_PASCALS = 2_000_000;

    /**
     * Reads what was typed; a blank value counts as not given. Temperatures and dew points in °C, relative humidity in
     * % RH, pressure in Pa (standard atmosphere when not given), phase {@code water} or {@code ice} for a dew point's
     * deposit, formulation by its {@link #key}.
     *
     * @throws NotUnderstood when something is missing, twice there, or not a value that air can have
     */
    public static Question read(Map<String, String> typed) {
        Fields fields = new Fields(typed);
        Temperature temperature = fields.temperature(TEMPERATURE);
        Pressure pressure = fields.given(PRESSURE) ? pressure(fields.number(PRESSURE)) : Pressure.STANDARD;
        return new Question(temperature, humidity(fields), pressure, formulation(fields));
    }

    /** The name of a formulation in queries and files: {@code sonntag_1990}. */
    public static String key(Formulation formulation) {
        return formulation.name().toLowerCase(Locale.ROOT);
    }

    private static Humidity humidity(Fields fields) {
        List<String> given = HUMIDITIES.stream().filter(fields::given).toList();
        if (given.size() != 1) {
            throw new NotUnderstood(
                    given.isEmpty() ? RELATIVE_HUMIDITY : given.get(1),
                    (given.isEmpty() ? "no measure of humidity was given" : String.join(" and ", given) + " were given")
                            + "; give exactly one of " + String.join(", ", HUMIDITIES));
        }
        return switch (given.get(0)) {
            case DEW_POINT -> new Humidity.Dew(new DewPoint(fields.temperature(DEW_POINT), deposit(fields)));
            case FROST_POINT -> new Humidity.Dew(frost(fields));
            default -> new Humidity.Relative(relative(fields.number(RELATIVE_HUMIDITY)));
        };
    }

    private static Phase deposit(Fields fields) {
        return switch (fields.text(PHASE).toLowerCase(Locale.ROOT)) {
            case "", "water" -> Phase.WATER;
            case "ice" -> Phase.ICE;
            default ->
                throw new NotUnderstood(
                        PHASE, "the phase was “" + fields.text(PHASE) + "”; give water or ice, or leave it out");
        };
    }

    private static DewPoint frost(Fields fields) {
        if (fields.text(PHASE).equalsIgnoreCase("water")) {
            throw new NotUnderstood(PHASE, "a frost point is over ice, yet the phase was water; give a dew_point");
        }
        return DewPoint.overIce(fields.temperature(FROST_POINT));
    }

    private static RelativeHumidity relative(double percent) {
        if (!(percent >= 0 && percent <= 110)) {
            throw new NotUnderstood(
                    RELATIVE_HUMIDITY,
                    "relative humidity was " + percent + " % RH; give a value from 0 to 100 % RH"
                            + " (to 110 % RH for readings that overshoot)");
        }
        return RelativeHumidity.ofPercent(percent);
    }

    private static Pressure pressure(double pascals) {
        if (pascals >= LOWEST_PASCALS && pascals <= HIGHEST_PASCALS) {
            return Pressure.ofPascals(pascals);
        }
        String looksLike = pascals > 100 && pascals < 2000 ? "; if it was meant in hPa, multiply it by 100" : "";
        throw new NotUnderstood(
                PRESSURE,
                "pressure was " + pascals + " Pa; the formulas hold from 10 000 Pa to 2 000 000 Pa" + looksLike);
    }

    private static Formulation formulation(Fields fields) {
        if (!fields.given(FORMULATION)) {
            return USUAL;
        }
        String name = fields.text(FORMULATION);
        return Arrays.stream(Formulation.values())
                .filter(f -> key(f).equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> new NotUnderstood(
                        FORMULATION,
                        "no formulation is called “" + name + "”; there are "
                                + Arrays.stream(Formulation.values())
                                        .map(Question::key)
                                        .collect(Collectors.joining(", "))));
    }
}
