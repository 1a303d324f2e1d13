// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
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
            double vapour = Math.exp(Math.log(0.05) + random.nextDouble() * Math.log(40_000 / 0.05));
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
}
