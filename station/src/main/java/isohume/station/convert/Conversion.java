// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

import isohume.moistair.OutsideRange;
import isohume.quantity.Phase;
import isohume.uncertainty.Budget;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * All measures of one humid air, in their own units.
 *
 * @param measures in the order of {@link Measure}; one that has no value here is missing
 * @param leftOut why it is missing
 * @param budgets of the measures, with U at k = 2; empty when no uncertainty was asked for
 * @param notes what a reader should know about these figures
 */
public record Conversion(
        Question question,
        Map<Measure, Double> measures,
        Map<Measure, String> leftOut,
        Map<Measure, Budget> budgets,
        List<String> notes) {
    private static final double SATURATED_PERCENT = 100;

    public Conversion {
        measures = ordered(measures);
        leftOut = ordered(leftOut);
        budgets = ordered(budgets);
        notes = List.copyOf(notes);
    }

    private static <T> Map<Measure, T> ordered(Map<Measure, T> map) {
        Map<Measure, T> copy = new EnumMap<>(Measure.class);
        copy.putAll(map);
        return Collections.unmodifiableMap(copy);
    }

    /**
     * Answers a question, with uncertainties if its numbers have any.
     *
     * @throws NotUnderstood when the air cannot exist or no formula is vouched for there
     */
    public static Conversion of(Question question) {
        return new Working(question).conversion(question.uncertain());
    }

    /**
     * The same with uncertainties in any case: those of the formulas are always there.
     *
     * @throws NotUnderstood when the air cannot exist or no formula is vouched for there
     */
    public static Conversion withUncertainties(Question question) {
        return new Working(question).conversion(true);
    }

    /** The figures while they are being worked out. */
    private static final class Working {
        private final Question question;
        private final Body body;
        private final Body.Inputs inputs;
        private final Map<Measure, Double> measures = new EnumMap<>(Measure.class);
        private final Map<Measure, String> leftOut = new EnumMap<>(Measure.class);
        private final Map<Measure, Budget> budgets = new EnumMap<>(Measure.class);
        private final List<String> notes = new ArrayList<>();

        Working(Question question) {
            this.question = question;
            this.body = Body.of(question);
            this.inputs = Body.Inputs.of(question);
        }

        Conversion conversion(boolean uncertainties) {
            refuseWhatCannotBe();
            for (Measure measure : Measure.values()) {
                try {
                    measures.put(measure, body.of(measure, inputs));
                } catch (OutsideRange outside) {
                    leftOut.put(measure, outside.getMessage());
                }
            }
            remark();
            if (uncertainties) {
                measures.forEach(this::budget);
            }
            return new Conversion(question, measures, leftOut, budgets, notes);
        }

        private void refuseWhatCannotBe() {
            try {
                double unused = body.of(Measure.VOLUME_FRACTION, inputs);
                double unusedToo = body.of(Measure.VAPOUR_PRESSURE, inputs);
            } catch (OutsideRange outside) {
                throw new NotUnderstood(
                        field(outside),
                        outside.getMessage() + "; ask within that range, or check what was typed",
                        outside);
            }
        }

        private String field(OutsideRange outside) {
            boolean byTemperature = question.known() == Measure.RELATIVE_HUMIDITY
                    || question.known() == Measure.RELATIVE_HUMIDITY_OVER_ICE;
            return byTemperature && outside.unit().equals("°C")
                    ? Question.TEMPERATURE
                    : question.known().key();
        }

        private void budget(Measure measure, double value) {
            try {
                budgets.put(measure, new UncertaintyOf(question, body, inputs).budget(measure, value));
            } catch (OutsideRange outside) {
                notes.add("no uncertainty for the " + measure.words() + ": " + outside.getMessage());
            }
        }

        private void remark() {
            if (measures.getOrDefault(Measure.RELATIVE_HUMIDITY, 0.0) > SATURATED_PERCENT) {
                notes.add("above 100 % RH water condenses; air like this does not last");
            }
            if (question.temperature().value() < 0) {
                notes.add("relative humidity is over liquid water, here supercooled, unless its name says ice");
            }
            if (question.mirrorPressure().isPresent()) {
                notes.add("dew and frost point are at the pressure of the air, not at that of the mirror");
            }
            if (measures.getOrDefault(Measure.WET_BULB, 1.0) < 0) {
                notes.add("the wet bulb is below 0 °C: it has "
                        + (question.bulb() == Phase.ICE ? "ice" : "supercooled water")
                        + " on it here; say with the phase if it has the other");
            }
        }
    }
}
