// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConversionTest {
    /*
     * Figures worked out apart from this program with mpmath 1.2.1 (40 digits) from the equations of Hardy 1998 and his
     * enhancement factors, epsilon 0.621945, Mv 18.015268 g/mol, R 8.314462618 J/(mol K), vapour as an ideal gas.
     * Tolerance: the sets for supercooled water and ice in use here are printed by Greenspan 1976 and differ from the
     * wide set of that calculation by less than 1e-5 relative.
     */
    @ParameterizedTest(name = "{0} of {2} °C in air at {1} °C")
    @CsvSource({
        "dew_point, 23, 12, 49.89367901, 1408.221314, 8.765656949, 10.30304789",
        "frost_point, 23, -10, 9.244345737, 260.9165121, 1.605671516, 1.908957983"
    })
    void agrees_with_an_independent_calculation(
            String known, String t, String value, double rh, double vapour, double mixing, double absolute) {
        Map<Measure, Double> found = convert(Map.of("temperature", t, known, value, "formulation", "hardy_1998"));
        assertEquals(rh, value(found, Measure.RELATIVE_HUMIDITY), 1e-5 * rh);
        assertEquals(vapour, value(found, Measure.VAPOUR_PRESSURE), 1e-5 * vapour);
        assertEquals(mixing, value(found, Measure.MIXING_RATIO), 1e-5 * mixing);
        assertEquals(absolute, value(found, Measure.ABSOLUTE_HUMIDITY), 1e-5 * absolute);
    }

    @Test
    void a_frost_point_is_given_only_below_freezing() {
        assertFalse(convert(Map.of("temperature", "23", "dew_point", "12")).containsKey(Measure.FROST_POINT));
        assertTrue(
                convert(Map.of("temperature", "23", "relative_humidity", "10")).containsKey(Measure.FROST_POINT));
    }

    @Test
    void what_no_formula_vouches_for_is_left_out_with_its_reason() {
        Conversion dry = Conversion.of(Question.read(Map.of("temperature", "23", "frost_point", "-80")));
        assertFalse(dry.measures().containsKey(Measure.DEW_POINT));
        assertTrue(
                String.valueOf(dry.leftOut().get(Measure.DEW_POINT)).contains("dew point"),
                dry.leftOut().toString());
    }

    @Test
    void air_that_would_rain_is_answered_with_a_warning() {
        Conversion wet = Conversion.of(Question.read(Map.of("temperature", "20", "dew_point", "20.5")));
        assertTrue(wet.notes().get(0).contains("condenses"), wet.notes().toString());
    }

    @Test
    void a_decimal_comma_and_a_true_minus_sign_are_understood() {
        assertEquals(
                convert(Map.of("temperature", "23.5", "frost_point", "-10.25")),
                convert(Map.of("temperature", "23,5", "frost_point", "−10,25")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "warm", "NaN", "0x1p3", "1e400", "23°C", "1e999999999", "--4"})
    void a_temperature_that_is_no_number_is_refused_by_name(String typed) {
        NotUnderstood said = refused(Map.of("temperature", typed, "dew_point", "12"));
        assertEquals("temperature", said.field());
    }

    @Test
    void two_measures_of_humidity_are_one_too_many() {
        NotUnderstood said = refused(Map.of("temperature", "23", "dew_point", "12", "relative_humidity", "50"));
        assertTrue(said.why().contains("exactly one"), said.why());
    }

    @Test
    void a_pressure_in_hectopascals_is_recognised_for_what_it_is() {
        NotUnderstood said = refused(Map.of("temperature", "23", "dew_point", "12", "pressure", "1013.25"));
        assertTrue(said.why().contains("hPa"), said.why());
    }

    @Test
    void a_dew_point_beyond_every_formula_says_the_range() {
        NotUnderstood said = refused(Map.of("temperature", "23", "dew_point", "-70"));
        assertTrue(said.why().contains("-50 to 0 °C"), said.why());
        assertEquals("dew_point", said.field());
    }

    @Test
    void vapour_alone_cannot_exceed_the_total_pressure() {
        NotUnderstood said = refused(Map.of("temperature", "90", "relative_humidity", "95", "pressure", "50000"));
        assertTrue(said.why().contains("total pressure"), said.why());
    }

    private static Map<Measure, Double> convert(Map<String, String> typed) {
        return Conversion.of(Question.read(typed)).measures();
    }

    private static double value(Map<Measure, Double> found, Measure measure) {
        return Objects.requireNonNull(found.get(measure), measure.key());
    }

    private static NotUnderstood refused(Map<String, String> typed) {
        return assertThrows(NotUnderstood.class, () -> Conversion.of(Question.read(typed)));
    }
}
