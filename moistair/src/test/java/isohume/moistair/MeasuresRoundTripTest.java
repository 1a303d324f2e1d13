// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Phase;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TimeZone;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every measure comes back from every other, and everything asked is a finite number or an error that says why. */
class MeasuresRoundTripTest {
    private static final long SEED = 1_998;
    private static final int CASES = 4_000;

    @ParameterizedTest
    @EnumSource
    void a_state_comes_back_from_each_of_its_measures(Formulation formulation) {
        MoistAir moist = MoistAir.by(formulation);
        Random random = new Random(SEED);
        int answered = 0;
        for (int i = 0; i < CASES; i++) {
            Surroundings place = anyPlace(moist, random);
            double vapour = anyVapour(random);
            HumidAir air = place.withVapourPressure(Air.pascals(vapour));
            for (HumidityMeasure measure : HumidityMeasure.values()) {
                answered += comesBack(place, air, measure, "seed " + SEED + " case " + i) ? 1 : 0;
            }
        }
        assertTrue(answered > 4 * CASES, "only " + answered + " answers");
    }

    private static Surroundings anyPlace(MoistAir moist, Random random) {
        double highest = Air.highestPascals(moist.formulation());
        double t = -60 + 150 * random.nextDouble();
        return moist.at(Air.celsius(t), Air.pascals(5e4 + (highest - 5e4) * random.nextDouble()));
    }

    private static boolean comesBack(Surroundings place, HumidAir air, HumidityMeasure measure, String which) {
        double value;
        try {
            value = measure.of(air);
        } catch (OutsideRange refused) {
            assertTrue(!refused.what().isEmpty() && !refused.unit().isEmpty(), which);
            return false;
        }
        String what = which + " " + measure + " " + value;
        assertTrue(Double.isFinite(value), what);
        double expected = air.vapourPressure().pascals();
        double back = measure.in(place, value).vapourPressure().pascals();
        assertEquals(expected, back, tolerance(measure) * expected, what);
        return true;
    }

    /** A dew point near 0 °C may fall into the step between two coefficient sets, see MeetingAtZeroTest. */
    private static double tolerance(HumidityMeasure measure) {
        return measure == HumidityMeasure.DEW_POINT ? 6e-6 : 1e-10;
    }

    @ParameterizedTest
    @EnumSource
    void a_wet_bulb_comes_back(Formulation formulation) {
        MoistAir moist = MoistAir.by(formulation);
        Random random = new Random(SEED);
        Psychrometer bulb = Psychrometer.assmannWater();
        for (int i = 0; i < CASES; i++) {
            double t = 15 + 43 * random.nextDouble();
            Surroundings place = moist.at(Air.celsius(t), Air.pascals(8e4 + 3e4 * random.nextDouble()));
            HumidAir air = place.withRelativeHumidity(Air.percent(30 + 75 * random.nextDouble()));
            double back = place.withWetBulb(air.wetBulb(bulb), bulb)
                    .relativeHumidity()
                    .percent();
            assertEquals(air.relativeHumidity().percent(), back, 1e-9, "seed " + SEED + " case " + i);
        }
    }

    /** Water and ice on the bulb, in all air; where a bulb has no value there is a range that says so. */
    @ParameterizedTest
    @EnumSource
    void wet_and_frozen_bulbs_come_back_wherever_they_have_a_value(Formulation formulation) {
        MoistAir moist = MoistAir.by(formulation);
        Random random = new Random(SEED);
        int answered = 0;
        for (int i = 0; i < CASES; i++) {
            Surroundings place = anyPlace(moist, random);
            double vapour = anyVapour(random);
            HumidAir air = place.withVapourPressure(Air.pascals(vapour));
            for (Psychrometer bulb : List.of(Psychrometer.assmannWater(), Psychrometer.assmannIce())) {
                OptionalDouble shown = answer(() -> air.wetBulb(bulb).celsius());
                if (shown.isPresent()) {
                    double back = place.withWetBulb(Air.celsius(shown.getAsDouble()), bulb)
                            .vapourPressure()
                            .pascals();
                    // the difference of two pressures: what is lost of it is lost of the larger
                    double scale = vapour + bulb.coefficient() * air.pressure().pascals() * 150;
                    assertEquals(vapour, back, 1e-10 * scale, "seed " + SEED + " case " + i + " " + bulb.bulb());
                    answered++;
                }
            }
        }
        assertTrue(answered > CASES / 4, "only " + answered + " answers");
    }

    /** What has no inverse: finite, or refused with the range. */
    @ParameterizedTest
    @EnumSource
    void enthalpies_densities_and_factors_are_finite_or_refused(Formulation formulation) {
        MoistAir moist = MoistAir.by(formulation);
        Random random = new Random(SEED);
        int answered = 0;
        for (int i = 0; i < CASES; i++) {
            double t = -120 + 400 * random.nextDouble();
            double p = Math.exp(random.nextDouble() * Math.log(3e6));
            Surroundings place = moist.at(Air.celsius(t), Air.pascals(p));
            double vapour = 1.2 * p * random.nextDouble();
            List<DoubleSupplier> questions = List.of(
                    () -> place.withVapourPressure(Air.pascals(vapour)).enthalpy(),
                    () -> place.withVapourPressure(Air.pascals(vapour)).density(),
                    () -> place.withVapourPressure(Air.pascals(vapour))
                            .relativeHumidity()
                            .percent(),
                    () -> moist.saturation(Air.celsius(t), Phase.WATER).pascals(),
                    () -> moist.saturation(Air.celsius(t), Phase.ICE).pascals(),
                    () -> moist.saturationSlope(Air.celsius(t), Phase.WATER),
                    () -> moist.enhancement(Air.celsius(t), Air.pascals(p), Phase.WATER),
                    () -> moist.enhancement(Air.celsius(t), Air.pascals(p), Phase.ICE),
                    () -> moist.saturationUncertainty(Air.celsius(t), Phase.WATER)
                            .standard(),
                    () -> moist.enhancementUncertainty(Air.celsius(t), Air.pascals(p), Phase.ICE)
                            .standard());
            for (int q = 0; q < questions.size(); q++) {
                OptionalDouble found = answer(questions.get(q));
                assertTrue(
                        found.isEmpty() || Double.isFinite(found.getAsDouble()),
                        "seed " + SEED + " case " + i + " question " + q + ": " + found);
                answered += found.isPresent() ? 1 : 0;
            }
        }
        assertTrue(answered > CASES, "only " + answered + " answers");
    }

    private static OptionalDouble answer(DoubleSupplier question) {
        try {
            return OptionalDouble.of(question.getAsDouble());
        } catch (OutsideRange refused) {
            assertTrue(!refused.what().isEmpty() && !refused.unit().isEmpty());
            return OptionalDouble.empty();
        }
    }

    @Test
    void nothing_depends_on_language_or_time_zone() {
        Locale language = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        String usual = report();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            assertEquals(usual, report());
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertEquals(usual, report());
        } finally {
            Locale.setDefault(language);
            TimeZone.setDefault(zone);
        }
    }

    private static String report() {
        StringBuilder report = new StringBuilder();
        for (Formulation formulation : Formulation.values()) {
            HumidAir air = MoistAir.by(formulation)
                    .at(Air.celsius(-0.5 + 21), Air.pascals(101_325))
                    .withRelativeHumidity(Air.percent(20));
            for (HumidityMeasure measure : HumidityMeasure.values()) {
                report.append(measure.key())
                        .append(' ')
                        .append(told(measure, air))
                        .append('\n');
            }
        }
        return report.toString();
    }

    private static String told(HumidityMeasure measure, HumidAir air) {
        try {
            return Double.toString(measure.of(air));
        } catch (OutsideRange refused) {
            return refused.toString();
        }
    }

    /** Pa; as many in each decade. */
    private static double anyVapour(Random random) {
        return Math.exp(Math.log(0.05) + random.nextDouble() * Math.log(40_000 / 0.05));
    }
}
