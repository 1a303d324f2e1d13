// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

import isohume.moistair.StatedUncertainty;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;
import isohume.uncertainty.Budget;
import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The budget of one measure: a line for each number that came with an uncertainty, and lines for what the sources of the
 * formulas say that they may be wrong by. Numbers are taken as independent, and so are the formulas on the way in and
 * out, which is on the safe side. What a psychrometer's coefficient, the formula of density or that of enthalpy may be
 * wrong by is not in it.
 */
final class UncertaintyOf {
    private static final double K = 2;

    private final Question question;
    private final Body body;
    private final Body.Inputs at;
    private final List<Input> lines = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();

    /** What a line of the budget changes. */
    private interface Place {
        Body.Inputs put(Body.Inputs inputs, double number);
    }

    UncertaintyOf(Question question, Body body, Body.Inputs at) {
        this.question = question;
        this.body = body;
        this.at = at;
    }

    /** @throws isohume.moistair.OutsideRange where the source of a formula says nothing, or within U of a formula's end */
    Budget budget(Measure wanted, double value) {
        given(Body.Inputs::withCelsius, "t", "air temperature", question.temperature(), "°C");
        given(
                Body.Inputs::withKnown,
                "x",
                question.known().words(),
                question.value(),
                question.known().unit());
        given(this::withPressure, "p", "pressure of the air", question.pressure(), "Pa");
        question.mirrorPressure()
                .ifPresent(p -> given(Body.Inputs::withMirror, "pm", "pressure at the mirror", p, "Pa"));
        boolean asGiven =
                wanted == question.known() && question.mirrorPressure().isEmpty();
        if (!asGiven) {
            formulas(Body.Inputs::plusIn, "in", at.mirror(), question.known(), at.known(), true, needsVapour(wanted));
            formulas(
                    Body.Inputs::plusOut,
                    "out",
                    at.pascals(),
                    wanted,
                    value,
                    wanted != Measure.ENHANCEMENT_FACTOR,
                    true);
        }
        return Budget.of(wanted.words(), wanted.differenceUnit(), lines, inputs -> run(wanted, inputs));
    }

    private static boolean needsVapour(Measure wanted) {
        return wanted != Measure.SATURATION_PRESSURE && wanted != Measure.ENHANCEMENT_FACTOR;
    }

    private void given(Place place, String symbol, String description, Typed number, String unit) {
        if (number.expanded() > 0) {
            Distribution known = new Distribution.Expanded(number.expanded(), K);
            line(place, Input.of(symbol, description, number.value(), unit, known, Origin.ASSUMED, "as typed"));
        }
    }

    private void formulas(
            Place place,
            String symbol,
            double pascals,
            Measure measure,
            double value,
            boolean saturation,
            boolean needed) {
        Optional<Phase> phase = phase(measure);
        if (phase.isEmpty() || !needed) {
            return;
        }
        Temperature where = Temperature.ofCelsius(
                switch (measure) {
                    case DEW_POINT, FROST_POINT, WET_BULB -> value;
                    default -> at.celsius();
                });
        if (saturation) {
            formula(
                    place,
                    "e_" + symbol,
                    "saturation pressure, relative",
                    body.air().saturationUncertainty(where, phase.get()));
        }
        if (measure != Measure.SATURATION_PRESSURE) {
            formula(
                    place,
                    "f_" + symbol,
                    "enhancement factor, relative",
                    body.air().enhancementUncertainty(where, Pressure.ofPascals(pascals), phase.get()));
        }
    }

    /** Over which phase the formulas are that stand between the vapour and a measure; empty where there are none. */
    private Optional<Phase> phase(Measure measure) {
        return switch (measure) {
            case RELATIVE_HUMIDITY, DEW_POINT, SATURATION_PRESSURE, ENHANCEMENT_FACTOR -> Optional.of(Phase.WATER);
            case RELATIVE_HUMIDITY_OVER_ICE, FROST_POINT -> Optional.of(Phase.ICE);
            case WET_BULB -> Optional.of(question.bulb());
            case VAPOUR_PRESSURE,
                    MIXING_RATIO,
                    SPECIFIC_HUMIDITY,
                    ABSOLUTE_HUMIDITY,
                    VOLUME_FRACTION,
                    VOLUME_RATIO,
                    ENTHALPY,
                    DENSITY -> Optional.empty();
        };
    }

    private void formula(Place place, String symbol, String description, StatedUncertainty stated) {
        Distribution known = new Distribution.Normal(stated.standard());
        line(place, Input.of(symbol, description, 0, "1", known, Origin.ASSUMED, stated.statement()));
    }

    private void line(Place place, Input input) {
        places.add(place);
        lines.add(input);
    }

    /** A mirror without a pressure of its own has that of the air. */
    private Body.Inputs withPressure(Body.Inputs inputs, double pascals) {
        Body.Inputs changed = inputs.withPascals(pascals);
        return question.mirrorPressure().isPresent() ? changed : changed.withMirror(pascals);
    }

    private double run(Measure wanted, double[] numbers) {
        Body.Inputs inputs = at;
        for (int i = 0; i < numbers.length; i++) {
            inputs = places.get(i).put(inputs, numbers[i]);
        }
        return body.of(wanted, inputs);
    }
}
