// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

import isohume.moistair.HumidAir;
import isohume.moistair.HumidityMeasure;
import isohume.moistair.MoistAir;
import isohume.moistair.Psychrometer;
import isohume.moistair.Surroundings;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;

/**
 * From a question's numbers to any measure. One body for the value and for its uncertainty.
 *
 * <p>Values are in the units of {@link Measure}. Formulas may be wrong: a relative error of the saturation pressure of
 * moist air enters where the vapour comes from a temperature ({@code in}) and where a temperature or a relative humidity
 * is made of it ({@code out}).
 */
record Body(Question question, MoistAir air, Psychrometer psychrometer) {
    static Body of(Question question) {
        Psychrometer bulb = question.bulb() == Phase.ICE ? Psychrometer.assmannIce() : Psychrometer.assmannWater();
        return new Body(question, MoistAir.by(question.formulation()), bulb);
    }

    /**
     * What the body is run with.
     *
     * @param celsius air temperature
     * @param known the known measure of humidity
     * @param pascals pressure of the air
     * @param mirror pressure at the mirror
     * @param in relative error of the formulas on the way in
     * @param out the same on the way out
     */
    record Inputs(double celsius, double known, double pascals, double mirror, double in, double out) {
        static Inputs of(Question question) {
            double pascals = question.pressure().value();
            return new Inputs(
                    question.temperature().value(),
                    question.value().value(),
                    pascals,
                    question.mirrorPressure().map(Typed::value).orElse(pascals),
                    0,
                    0);
        }

        Inputs withCelsius(double other) {
            return new Inputs(other, known, pascals, mirror, in, out);
        }

        Inputs withKnown(double other) {
            return new Inputs(celsius, other, pascals, mirror, in, out);
        }

        Inputs withPascals(double other) {
            return new Inputs(celsius, known, other, mirror, in, out);
        }

        Inputs withMirror(double other) {
            return new Inputs(celsius, known, pascals, other, in, out);
        }

        Inputs plusIn(double error) {
            return new Inputs(celsius, known, pascals, mirror, in + error, out);
        }

        Inputs plusOut(double error) {
            return new Inputs(celsius, known, pascals, mirror, in, out + error);
        }
    }

    /** A measure of the air. */
    double of(Measure wanted, Inputs inputs) {
        if (wanted == question.known() && question.mirrorPressure().isEmpty()) {
            return inputs.known(); // as it was given, without a round trip
        }
        Temperature t = Temperature.ofCelsius(inputs.celsius());
        HumidAir state = state(inputs);
        return switch (wanted) {
            case RELATIVE_HUMIDITY, RELATIVE_HUMIDITY_OVER_ICE -> plain(wanted).of(state) / (1 + inputs.out());
            case DEW_POINT, FROST_POINT ->
                plain(wanted).of(withVapour(inputs, state.vapourPressure().pascals() / (1 + inputs.out())));
            case WET_BULB -> wetBulb(inputs, state);
            case VAPOUR_PRESSURE, MIXING_RATIO, SPECIFIC_HUMIDITY, ABSOLUTE_HUMIDITY, VOLUME_FRACTION, VOLUME_RATIO ->
                plain(wanted).of(state);
            case ENTHALPY -> state.enthalpy() / 1000;
            case DENSITY -> state.density();
            case SATURATION_PRESSURE -> air.saturation(t, Phase.WATER).pascals() * (1 + inputs.out());
            case ENHANCEMENT_FACTOR ->
                air.enhancement(t, Pressure.ofPascals(inputs.pascals()), Phase.WATER) * (1 + inputs.out());
        };
    }

    private HumidAir state(Inputs inputs) {
        double vapour = vapour(inputs);
        return withVapour(inputs, vapour);
    }

    private double vapour(Inputs inputs) {
        Surroundings around = surroundings(inputs);
        return switch (question.known()) {
            case DEW_POINT -> atMirror(inputs, Phase.WATER);
            case FROST_POINT -> atMirror(inputs, Phase.ICE);
            case WET_BULB -> {
                Temperature bulb = Temperature.ofCelsius(inputs.known());
                yield around.withWetBulb(bulb, psychrometer).vapourPressure().pascals()
                        + inputs.in() * saturated(inputs, bulb);
            }
            case RELATIVE_HUMIDITY, RELATIVE_HUMIDITY_OVER_ICE ->
                plain(question.known())
                                .in(around, inputs.known())
                                .vapourPressure()
                                .pascals()
                        * (1 + inputs.in());
            case VAPOUR_PRESSURE,
                    MIXING_RATIO,
                    SPECIFIC_HUMIDITY,
                    ABSOLUTE_HUMIDITY,
                    VOLUME_FRACTION,
                    VOLUME_RATIO,
                    ENTHALPY,
                    DENSITY,
                    SATURATION_PRESSURE,
                    ENHANCEMENT_FACTOR ->
                plain(question.known())
                        .in(around, inputs.known())
                        .vapourPressure()
                        .pascals();
        };
    }

    /** The share of vapour is the same at the mirror and in the air, whatever their pressures. */
    private double atMirror(Inputs inputs, Phase deposit) {
        DewPoint point = new DewPoint(Temperature.ofCelsius(inputs.known()), deposit);
        double there =
                air.vapourPressure(point, Pressure.ofPascals(inputs.mirror())).pascals();
        return there * inputs.pascals() / inputs.mirror() * (1 + inputs.in());
    }

    /** To the first order in the error, which is all that a budget takes of it. */
    private double wetBulb(Inputs inputs, HumidAir state) {
        Temperature bulb = state.wetBulb(psychrometer);
        double missing = inputs.out() == 0 ? 0 : inputs.out() * saturated(inputs, bulb);
        return withVapour(inputs, state.vapourPressure().pascals() - missing)
                .wetBulb(psychrometer)
                .celsius();
    }

    private double saturated(Inputs inputs, Temperature bulb) {
        return air.vapourPressure(new DewPoint(bulb, psychrometer.bulb()), Pressure.ofPascals(inputs.pascals()))
                .pascals();
    }

    private HumidAir withVapour(Inputs inputs, double pascals) {
        return surroundings(inputs).withVapourPressure(Pressure.ofPascals(pascals));
    }

    private Surroundings surroundings(Inputs inputs) {
        return air.at(Temperature.ofCelsius(inputs.celsius()), Pressure.ofPascals(inputs.pascals()));
    }

    private static HumidityMeasure plain(Measure measure) {
        return HumidityMeasure.valueOf(measure.name());
    }
}
