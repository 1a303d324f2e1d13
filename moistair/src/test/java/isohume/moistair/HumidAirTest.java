// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Measures of humid air against an independent evaluation and against published figures. */
class HumidAirTest {
    private static final String FILE = "humidity_conversion_checks.csv";
    private final MoistAir hardy = MoistAir.by(Formulation.HARDY_1998);
    private final MoistAir magnus = MoistAir.by(Formulation.WMO_MAGNUS);

    private static final Map<String, ToDoubleFunction<HumidAir>> MEASURES = Map.of(
            "x",
            HumidAir::volumeFraction,
            "W",
            HumidAir::mixingRatio,
            "q",
            HumidAir::specificHumidity,
            "absolute humidity",
            air -> air.absoluteHumidity() * 1e3,
            "p_w",
            air -> air.vapourPressure().pascals(),
            "rh (over water)",
            air -> air.relativeHumidity().percent());

    @TestFactory
    Stream<DynamicTest> measures_of_air_with_a_dew_or_frost_point() {
        return Figures.of(FILE, row -> row.text("formulation").startsWith("hardy-1998 + enh") && row.gives("t"))
                .stream()
                .map(row -> dynamicTest(row.text("case"), () -> {
                    DewPoint point = row.gives("t_f") ? Air.frost(row.given("t_f")) : Air.dew(row.given("t_d"));
                    HumidAir air = hardy.at(Air.celsius(row.given("t")), Air.pascals(row.given("p")))
                            .withDewPoint(point);
                    double found = Figures.named(MEASURES, row.text("quantity")).applyAsDouble(air);
                    assertEquals(row.number("value"), found, 1.5e-9 * row.number("value"), row::toString);
                }));
    }

    @TestFactory
    Stream<DynamicTest> vapour_pressure_and_humidity_by_an_assmann_psychrometer_after_wmo_no_8() {
        return Figures.of(FILE, row -> row.text("case").startsWith("psychrometer-")).stream()
                .map(row -> dynamicTest(row.text("case") + " " + row.text("quantity"), () -> {
                    boolean iced = row.given("tw") < 0; // its coefficient is from memory; the arithmetic is not
                    Psychrometer bulb = iced ? Psychrometer.assmannIce() : Psychrometer.assmannWater();
                    HumidAir air = magnus.at(Air.celsius(row.given("t")), Air.pascals(row.given("p") * 100))
                            .withWetBulb(Air.celsius(row.given("tw")), bulb);
                    double found = row.is("quantity", "e")
                            ? air.vapourPressure().hectopascals()
                            : air.relativeHumidity().percent();
                    assertEquals(row.number("value"), found, 1e-9 * row.number("value"), row::toString);
                    assertEquals(row.given("tw"), air.wetBulb(bulb).celsius(), 1e-9, row::toString);
                }));
    }

    /** The row takes 0.62198 for the ratio of molar masses, so its vapour pressure is worked out here. */
    @Test
    void relative_humidity_from_a_mixing_ratio_as_worked_in_a_public_implementation_of_wmo_no_8() {
        Figures.Row row = Figures.of(FILE, r -> r.is("case", "wmo-rh")).get(0);
        double vapour = 100_000 * 0.001 / (0.62198 + 0.001);
        HumidAir air = magnus.at(Air.celsius(10), Air.pascals(100_000)).withVapourPressure(Air.pascals(vapour));
        assertEquals(row.number("value"), air.relativeHumidity().percent(), 1e-12 * row.number("value"));
    }

    @Test
    void mixing_ratio_specific_humidity_and_enthalpy_of_the_psychrolib_tests() {
        HumidAir wet = hardy.at(Air.celsius(30), Air.pascals(95_461)).withVapourPressure(Air.pascals(3169.7));
        assertEquals(value("psy-w-pw", "W"), wet.mixingRatio(), 1e-6 * value("psy-w-pw", "W"));
        HumidAir air = hardy.at(Air.celsius(25), Air.pascals(101_325)).withMixingRatio(0.006);
        assertEquals(value("psy-q", "q"), air.specificHumidity(), 1e-9);
        HumidAir warm = hardy.at(Air.celsius(30), Air.pascals(101_325)).withMixingRatio(0.02);
        assertEquals(value("psy-h", "h"), warm.enthalpy(), 3e-4 * value("psy-h", "h"));
        HumidAir dry = hardy.at(Air.celsius(25), Air.pascals(101_325)).withMixingRatio(0);
        assertEquals(value("psy-dry", "h dry"), dry.enthalpy(), 3e-4 * value("psy-dry", "h dry"));
    }

    /** ASHRAE's table is of a real gas; saturated air by our enhancement factor comes close to it. */
    @TestFactory
    Stream<DynamicTest> saturated_air_is_near_the_table_of_ashrae_2017() {
        return Figures.of(FILE, row -> row.is("case", "psy-w-sat") || row.is("case", "psy-h-sat")).stream()
                .map(row -> dynamicTest(row.text("case") + " " + row.text("input"), () -> {
                    double t = row.given("t");
                    DewPoint point = new DewPoint(Air.celsius(t), t < 0 ? Phase.ICE : Phase.WATER);
                    HumidAir air = hardy.at(Air.celsius(t), Air.pascals(row.given("p")))
                            .withDewPoint(point);
                    double found = row.is("quantity", "W_sat") ? air.mixingRatio() : air.enthalpy();
                    assertEquals(row.number("value"), found, 6e-3 * Math.abs(row.number("value")), row::toString);
                }));
    }

    private static double value(String name, String quantity) {
        return Figures.of(FILE, row -> row.is("case", name) && row.is("quantity", quantity))
                .get(0)
                .number("value");
    }
}
