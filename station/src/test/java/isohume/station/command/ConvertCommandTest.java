// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConvertCommandTest {
    @Test
    void a_dew_point_gives_every_measure_with_its_unit() throws IOException {
        JsonNode tree = json("--temperature", "25", "--dew-point", "14.3", "--formulation", "hyland_wexler_1983");
        assertEquals("% RH", tree.get("units").get("relative_humidity").textValue());
        assertEquals(14.3, tree.get("dew_point").doubleValue());
        assertTrue(tree.get("frost_point").isNull());
        assertTrue(tree.get("left_out").get("frost_point").textValue().contains("0.01 °C"));
    }

    /*
     * Saturation humidity ratio and enthalpy at 25 °C and 101.325 kPa: ASHRAE Fundamentals 2017, chapter 1, table 2:
     * Ws = 0.020173 kg/kg, hs = 76.504 kJ/kg. Figures of the table from memory; the table has real-gas enthalpies, the
     * formula in use here is that of an ideal mixture, so the limit on it is 0.5 %.
     */
    @Test
    void saturated_air_is_as_in_the_handbook() throws IOException {
        JsonNode tree =
                json("--temperature", "25", "--relative-humidity", "100", "--formulation", "hyland_wexler_1983");
        assertEquals(20.173, tree.get("mixing_ratio").doubleValue(), 0.01);
        assertEquals(76.504, tree.get("enthalpy").doubleValue(), 0.38);
        assertEquals(25, tree.get("wet_bulb").doubleValue(), 0.001);
    }

    @Test
    void no_answer_depends_on_language_or_time_zone() {
        Locale language = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        Object[] uncertain = {"convert", "--temperature", "23±0.1", "--dew-point", "12.03±0.1", "--uncertainty"};
        Object[] data = {"convert", "--temperature", "23±0.1", "--dew-point", "12.03±0.1", "--uncertainty", "--json"};
        List<Said> usual = List.of(Said.by(uncertain), Said.by(data));
        List<String> figures = publishedFigures();
        try {
            for (String tag : List.of("ar-EG-u-nu-arab", "tr-TR", "de-DE")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
                assertEquals(usual, List.of(Said.by(uncertain), Said.by(data)), tag);
                assertEquals(figures, publishedFigures(), tag);
            }
        } finally {
            Locale.setDefault(language);
            TimeZone.setDefault(zone);
        }
    }

    /** All but the first line, which tells the time. */
    private static List<String> publishedFigures() {
        return Said.by("validate").answer().lines().skip(1).toList();
    }

    /** Each measure, given back as input, leads to the same air. */
    @ParameterizedTest
    @CsvSource({
        "relative_humidity",
        "dew_point",
        "wet_bulb",
        "vapour_pressure",
        "mixing_ratio",
        "specific_humidity",
        "absolute_humidity",
        "volume_fraction",
        "volume_ratio"
    })
    void every_measure_can_be_given_as_it_was_answered(String key) throws IOException {
        JsonNode first = json("--temperature", "21", "--dew-point", "9.5", "--pressure", "98000");
        JsonNode again = json(
                "--temperature",
                "21",
                "--" + key.replace('_', '-'),
                first.get(key).asText(),
                "--pressure",
                "98000");
        assertEquals(9.5, again.get("dew_point").doubleValue(), 1e-8);
    }

    @ParameterizedTest
    @CsvSource({"frost_point", "relative_humidity_over_ice"})
    void measures_over_ice_can_be_given_below_freezing(String key) throws IOException {
        JsonNode first = json("--temperature", "-12", "--frost-point", "-15.5");
        JsonNode again = json(
                "--temperature",
                "-12",
                "--" + key.replace('_', '-'),
                first.get(key).asText());
        assertEquals(
                first.get("vapour_pressure").doubleValue(),
                again.get("vapour_pressure").doubleValue(),
                1e-8);
    }

    /*
     * By hand: d ln e/dt over water near 12 °C is 0.0660 1/K and near 23 °C 0.0606 1/K (Clausius and Clapeyron,
     * L/(Rv T²) with L = 2.4727e6 and 2.4465e6 J/kg, Rv = 461.52 J/(kg K)), so 0.10 K of dew point is 0.330 % RH at
     * 50 % RH and 0.10 K of temperature 0.303 % RH; together 0.448 % RH. Formulas add less than 0.02 % RH.
     */
    @Test
    void uncertainties_are_propagated_as_by_hand() throws IOException {
        JsonNode tree = json("--temperature", "23+-0.1", "--dew-point", "12.03±0.1");
        assertEquals(0.448, tree.get("uncertainty").get("relative_humidity").doubleValue(), 0.005);
        assertEquals(2.0, tree.get("coverage_factor").doubleValue());
        JsonNode lines = tree.get("budget").get("relative_humidity");
        assertEquals("t", lines.get(0).get("symbol").textValue());
        assertTrue(Stream.of("e_in", "f_in", "e_out", "f_out")
                .allMatch(s -> lines.findValuesAsText("symbol").contains(s)));
        assertEquals(0.1, tree.get("uncertainty").get("dew_point").doubleValue(), 1e-12);
    }

    @Test
    void what_the_formulas_may_be_wrong_by_can_be_asked_for_alone() throws IOException {
        JsonNode tree = json("--temperature", "20", "--relative-humidity", "50", "--uncertainty");
        double u = tree.get("uncertainty").get("vapour_pressure").doubleValue()
                / tree.get("vapour_pressure").doubleValue();
        assertTrue(u > 1e-4 && u < 1e-3, "relative U of the vapour pressure " + u);
    }

    /**
     * The mole fraction is the same at the mirror, so vapour pressures are as the total pressures; but for the
     * enhancement factor, which grows by about 0.4 % for each 100 kPa (Greenspan 1976), here by 0.0004.
     */
    @Test
    void a_mirror_at_another_pressure_sees_another_dew_point() throws IOException {
        JsonNode plain = json("--temperature", "23", "--dew-point", "12");
        JsonNode above = json("--temperature", "23", "--dew-point", "12", "--mirror-pressure", "111457.5");
        assertEquals(
                plain.get("vapour_pressure").doubleValue() / 1.1,
                above.get("vapour_pressure").doubleValue(),
                0.7);
    }

    @ParameterizedTest(name = "{0} is wrong use")
    @CsvSource(
            delimiter = '|',
            value = {
                "--temperature 20|no measure of humidity",
                "--temperature 20 --dew-point 1 --relative-humidity 2|exactly one",
                "--temperature warm --dew-point 1|not a number",
                "--temperature 20 --dew-point NaN|not a number",
                "--temperature 20 --dew-point 1 --pressure 1013|in hPa",
                "--temperature 20 --relative-humidity 50 --mirror-pressure 101325|dew or frost point only",
                "--temperature 20 --dew-point 1±-2|uncertainty",
                "--dew-point 1|--temperature",
                "--temperature 20 --dewpoint 1|--dew-point"
            })
    void wrong_use_says_what_is_wrong_and_where_help_is(String arguments, String said) {
        Said wrong = Said.by((Object[]) ("convert " + arguments).split(" "));
        assertEquals(2, wrong.code());
        assertTrue(wrong.messages().contains(said), wrong.messages());
        assertTrue(wrong.messages().contains("isohume convert --help"), wrong.messages());
    }

    @Test
    void air_that_no_formula_knows_fails_with_the_range() {
        Said said = Said.by("convert", "--temperature", "20", "--dew-point", "-70");
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("-50 to 0 °C"), said.messages());
    }

    private static JsonNode json(String... arguments) throws IOException {
        Object[] all = Stream.concat(Stream.of("convert", "--json"), Stream.of(arguments))
                .toArray();
        Said said = Said.by(all);
        assertEquals(0, said.code(), said.messages());
        return new ObjectMapper().readTree(said.answer());
    }
}
