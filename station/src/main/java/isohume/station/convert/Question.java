// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

import isohume.moistair.Formulation;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Humid air, told by its temperature, one measure of its humidity and its pressure.
 *
 * @param temperature °C
 * @param known which measure of humidity, a dew point over ice as a frost point
 * @param value of it, in its unit
 * @param pressure of the air, Pa
 * @param mirrorPressure of the air where a dew or frost point was measured, Pa; as the air's when it is missing
 * @param bulb what is on a psychrometer's bulb
 */
public record Question(
        Typed temperature,
        Measure known,
        Typed value,
        Typed pressure,
        Optional<Typed> mirrorPressure,
        Phase bulb,
        Formulation formulation) {
    public static final String TEMPERATURE = "temperature";
    public static final String PRESSURE = "pressure";
    public static final String MIRROR_PRESSURE = "mirror_pressure";
    public static final String PHASE = "phase";
    public static final String FORMULATION = "formulation";

    /** The keys of which exactly one must be given. */
    public static final List<String> HUMIDITIES =
            Measure.ofHumidity().stream().map(Measure::key).toList();

    /** Every key that is read. */
    public static final List<String> KEYS = Stream.concat(
                    Stream.of(TEMPERATURE, PRESSURE, MIRROR_PRESSURE, PHASE, FORMULATION), HUMIDITIES.stream())
            .toList();

    /** What is meant when no formulation is named. */
    public static final Formulation USUAL = Formulation.DEFAULT;

    // Greenspan 1976 gives his enhancement factors from 0.1 to 20 standard atmospheres (range from memory)
    private static final double LOWEST_PASCALS = 10_000;
    private static final double HIGHEST_PASCALS = 2_000_000;

    /**
     * Reads what was typed; a blank value counts as not given. Temperatures and dew points in °C, other measures in
     * their {@link Measure#unit}, pressures in Pa (standard atmosphere when not given), phase {@code water} or {@code
     * ice} of a dew point's deposit or on a wet bulb, formulation by its {@link #key}. Each number may have its uncertainty, U at k = 2,
     * behind it: {@code 12.03±0.1}.
     *
     * @throws NotUnderstood when something is missing, twice there, or not a value that air can have
     */
    public static Question read(Map<String, String> typed) {
        Fields fields = new Fields(typed);
        Typed temperature = fields.temperature(TEMPERATURE);
        Typed pressure = fields.given(PRESSURE) ? pressure(fields, PRESSURE) : Typed.exact(Pressure.STANDARD.pascals());
        Measure given = humidity(fields);
        Measure known = deposit(fields, given);
        return new Question(
                temperature,
                known,
                value(fields, given),
                pressure,
                mirror(fields, known),
                fields.text(PHASE).equalsIgnoreCase("ice") ? Phase.ICE : Phase.WATER,
                formulation(fields));
    }

    /** The name of a formulation in queries and files: {@code sonntag_1990}. */
    public static String key(Formulation formulation) {
        return formulation.name().toLowerCase(Locale.ROOT);
    }

    /** Whether any number came with an uncertainty. */
    public boolean uncertain() {
        return temperature.expanded() > 0
                || value.expanded() > 0
                || pressure.expanded() > 0
                || mirrorPressure.map(p -> p.expanded() > 0).orElse(false);
    }

    private static Measure humidity(Fields fields) {
        List<Measure> given =
                Measure.ofHumidity().stream().filter(m -> fields.given(m.key())).toList();
        if (given.size() == 1) {
            return given.getFirst();
        }
        String which = given.stream().map(Measure::key).collect(Collectors.joining(" and "));
        throw new NotUnderstood(
                given.isEmpty() ? Measure.RELATIVE_HUMIDITY.key() : given.get(1).key(),
                (given.isEmpty() ? "no measure of humidity was given" : which + " were given")
                        + "; give exactly one of " + String.join(", ", HUMIDITIES));
    }

    private static Measure deposit(Fields fields, Measure given) {
        String phase = fields.text(PHASE).toLowerCase(Locale.ROOT);
        if (!List.of("", "water", "ice").contains(phase)) {
            throw new NotUnderstood(
                    PHASE, "the phase was “" + fields.text(PHASE) + "”; give water or ice, or leave it out");
        }
        if (given == Measure.FROST_POINT && phase.equals("water")) {
            throw new NotUnderstood(PHASE, "a frost point is over ice, yet the phase was water; give a dew_point");
        }
        return given == Measure.DEW_POINT && phase.equals("ice") ? Measure.FROST_POINT : given;
    }

    private static Typed value(Fields fields, Measure known) {
        return switch (known) {
            case DEW_POINT, FROST_POINT, WET_BULB -> fields.temperature(known.key());
            case RELATIVE_HUMIDITY, RELATIVE_HUMIDITY_OVER_ICE -> relative(known, fields.number(known.key()));
            case VAPOUR_PRESSURE,
                    MIXING_RATIO,
                    SPECIFIC_HUMIDITY,
                    ABSOLUTE_HUMIDITY,
                    VOLUME_FRACTION,
                    VOLUME_RATIO,
                    ENTHALPY,
                    DENSITY,
                    SATURATION_PRESSURE,
                    ENHANCEMENT_FACTOR -> notNegative(known, fields.number(known.key()));
        };
    }

    private static Typed relative(Measure known, Typed percent) {
        if (!(percent.value() >= 0 && percent.value() <= 110)) {
            throw new NotUnderstood(
                    known.key(),
                    known.words() + " was " + percent.value() + " % RH; give a value from 0 to 100 % RH"
                            + " (to 110 % RH for readings that overshoot)");
        }
        return percent;
    }

    private static Typed notNegative(Measure known, Typed number) {
        if (!(number.value() >= 0)) {
            throw new NotUnderstood(
                    known.key(),
                    "the " + known.words() + " was " + number.value() + " " + known.unit()
                            + "; no air has less than none, check the sign");
        }
        return number;
    }

    private static Optional<Typed> mirror(Fields fields, Measure known) {
        if (!fields.given(MIRROR_PRESSURE)) {
            return Optional.empty();
        }
        if (known != Measure.DEW_POINT && known != Measure.FROST_POINT) {
            throw new NotUnderstood(
                    MIRROR_PRESSURE,
                    "a mirror pressure goes with a dew or frost point only, yet the " + known.words() + " was given");
        }
        return Optional.of(pressure(fields, MIRROR_PRESSURE));
    }

    private static Typed pressure(Fields fields, String field) {
        Typed pascals = fields.number(field);
        if (pascals.value() >= LOWEST_PASCALS && pascals.value() <= HIGHEST_PASCALS) {
            return pascals;
        }
        String looksLike =
                pascals.value() > 100 && pascals.value() < 2000 ? "; if it was meant in hPa, multiply it by 100" : "";
        throw new NotUnderstood(
                field,
                field.replace('_', ' ') + " was " + pascals.value()
                        + " Pa; the formulas hold from 10 000 Pa to 2 000 000 Pa" + looksLike);
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
