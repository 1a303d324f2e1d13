// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

import isohume.moistair.MoistAir;
import isohume.moistair.OutsideRange;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * All measures of one humid air, in their own units.
 *
 * @param measures in the order of {@link Measure}; one that has no value here is missing, and a note says why
 * @param notes what a reader should know about these figures
 */
public record Conversion(Question question, Map<Measure, Double> measures, List<String> notes) {
    // molar mass of water over that of dry air; the figure of the ASHRAE Handbook, Fundamentals, chapter 1
    private static final double WATER_TO_AIR = 0.621945;
    // molar mass of water 18.015268 g/mol, molar gas constant 8.314462618 J/(mol K); vapour taken as an ideal gas
    private static final double GRAMS_KELVIN_PER_JOULE = 18.015268 / 8.314462618;
    private static final double FREEZING_CELSIUS = 0.01;

    public Conversion {
        measures = Collections.unmodifiableMap(new EnumMap<>(measures));
        notes = List.copyOf(notes);
    }

    /**
     * Answers a question.
     *
     * @throws NotUnderstood when the air cannot exist or no formula is vouched for there
     */
    public static Conversion of(Question question) {
        try {
            return new Working(question).conversion();
        } catch (OutsideRange outside) {
            throw new NotUnderstood(
                    outside.what().startsWith("saturation") ? Question.TEMPERATURE : field(question),
                    outside.getMessage() + "; ask within that range, or check what was typed",
                    outside);
        }
    }

    private static String field(Question question) {
        return switch (question.humidity()) {
            case Humidity.Dew dew -> dew.point().deposit() == Phase.ICE ? Question.FROST_POINT : Question.DEW_POINT;
            case Humidity.Relative relative -> Question.RELATIVE_HUMIDITY;
        };
    }

    /** The figures while they are being worked out. */
    private static final class Working {
        private final Question question;
        private final MoistAir air;
        private final Temperature t;
        private final Pressure total;
        private final Map<Measure, Double> measures = new EnumMap<>(Measure.class);
        private final List<String> notes = new ArrayList<>();

        Working(Question question) {
            this.question = question;
            this.air = MoistAir.by(question.formulation());
            this.t = question.temperature();
            this.total = question.pressure();
        }

        Conversion conversion() {
            double saturation = air.saturation(t, Phase.WATER).pascals();
            double enhancement = air.enhancement(t, total, Phase.WATER);
            double vapour = vapour(saturation * enhancement);
            double percent = 100 * vapour / (saturation * enhancement);
            measures.put(Measure.RELATIVE_HUMIDITY, percent);
            points(vapour);
            measures.put(Measure.VAPOUR_PRESSURE, vapour);
            measures.put(Measure.SATURATION_PRESSURE, saturation);
            measures.put(Measure.ENHANCEMENT_FACTOR, enhancement);
            measures.put(Measure.MIXING_RATIO, 1000 * WATER_TO_AIR * vapour / (total.pascals() - vapour));
            measures.put(Measure.ABSOLUTE_HUMIDITY, GRAMS_KELVIN_PER_JOULE * vapour / t.kelvin());
            remark(percent);
            return new Conversion(question, measures, notes);
        }

        private double vapour(double saturated) {
            double pascals = switch (question.humidity()) {
                case Humidity.Dew dew -> air.vapourPressure(dew.point(), total).pascals();
                case Humidity.Relative relative -> relative.humidity().fraction() * saturated;
            };
            if (pascals >= total.pascals()) {
                throw new NotUnderstood(
                        field(question),
                        "the vapour alone would have " + Math.round(pascals) + " Pa, more than the total pressure of "
                                + Math.round(total.pascals()) + " Pa; lower the humidity or raise the pressure");
            }
            return pascals;
        }

        private void points(double vapour) {
            point(Measure.DEW_POINT, vapour, Phase.WATER);
            Double dew = measures.get(Measure.DEW_POINT);
            if (dew == null || dew < FREEZING_CELSIUS) {
                point(Measure.FROST_POINT, vapour, Phase.ICE);
            }
        }

        private void point(Measure measure, double vapour, Phase deposit) {
            if (question.humidity() instanceof Humidity.Dew dew && dew.point().deposit() == deposit) {
                measures.put(measure, dew.point().celsius()); // as it was given, without a round trip
                return;
            }
            try {
                measures.put(
                        measure,
                        air.dewPoint(Pressure.ofPascals(vapour), total, deposit).celsius());
            } catch (OutsideRange outside) {
                notes.add("left out: " + outside.getMessage());
            }
        }

        private void remark(double percent) {
            if (percent > 100) {
                notes.add("above 100 % RH water condenses; air like this does not last");
            }
            if (t.celsius() < 0) {
                notes.add("relative humidity is over liquid water, here supercooled, and not over ice");
            }
        }
    }
}
