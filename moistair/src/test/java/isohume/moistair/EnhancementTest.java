// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Enhancement factors against an independent evaluation, and against real-gas models as a check of sense. */
class EnhancementTest {
    private final MoistAir hardy = MoistAir.by(Formulation.HARDY_1998);
    private final MoistAir sonntag = MoistAir.by(Formulation.SONNTAG_1990);

    @TestFactory
    Stream<DynamicTest> hardy_1998_matches_an_independent_evaluation() {
        return Figures.of("enhancement_factor_checks.csv", row -> row.is("formulation", "enh-hardy-1998")).stream()
                .map(row -> dynamicTest(name(row), () -> {
                    double found = factor(hardy, row);
                    assertEquals(row.number("f"), found, row.number("tolerance_abs"), row::toString);
                }));
    }

    @TestFactory
    Stream<DynamicTest> greenspan_1976_matches_an_independent_evaluation() {
        Enhancement set = GreenspanEnhancement.greenspanWater(Elementary.STRICT);
        return Figures.of("enhancement_factor_checks.csv", row -> row.is("formulation", "enh-greenspan-1976")).stream()
                .map(row -> dynamicTest(name(row), () -> {
                    double kelvin = Air.celsius(row.number("t_C")).kelvin();
                    double found = Math.exp(
                            set.logAt(kelvin, Math.log(wexler1976(kelvin)), wexler1976(kelvin), row.number("p_Pa")));
                    assertEquals(row.number("f"), found, row.number("tolerance_abs"), row::toString);
                }));
    }

    /** The rows were computed with the saturation pressure of Wexler 1976, J. Res. NBS 80A, 775. */
    private static double wexler1976(double t) {
        return Math.exp(-0.29912729e4 / (t * t)
                - 0.60170128e4 / t
                + 0.1887643854e2
                - 0.28354721e-1 * t
                + 0.17838301e-4 * t * t
                - 0.84150417e-9 * Math.pow(t, 3)
                + 0.44412543e-12 * Math.pow(t, 4)
                + 0.2858487e1 * Math.log(t));
    }

    /** Hyland and Wexler 1983 print f from a virial model; Greenspan's fit is a few parts in ten thousand away. */
    @TestFactory
    Stream<DynamicTest> greenspan_1976_is_near_what_hyland_and_wexler_print_at_one_bar() {
        return Figures.of(
                        "enhancement_factor_checks.csv",
                        row -> row.is("formulation", "hyland-wexler-1983 virial model") && row.is("p_Pa", "1e5"))
                .stream()
                .map(row -> dynamicTest(name(row), () -> {
                    double distance = row.number("t_C") < 0 ? 1.5e-3 : 3e-4;
                    assertEquals(row.number("f"), factor(sonntag, row), distance, row::toString);
                }));
    }

    @TestFactory
    Stream<DynamicTest> both_are_near_a_real_gas_model() {
        return Figures.of("enhancement_factor_checks.csv", row -> row.is("formulation", "RP-1485 virial model"))
                .stream()
                .map(row -> dynamicTest(name(row), () -> {
                    double distance = row.number("t_C") < -50 ? 2.2e-3 : 9e-4;
                    assertEquals(row.number("f"), factor(hardy, row), distance, row::toString);
                    assertEquals(row.number("f"), factor(sonntag, row), distance, row::toString);
                }));
    }

    /** An algebraic identity: Hardy expanded Greenspan's polynomials in kelvin and printed eight digits. */
    @Test
    void the_kelvin_sets_of_hardy_are_the_celsius_sets_of_greenspan() {
        for (int celsius = -100; celsius <= 100; celsius++) {
            Temperature t = Air.celsius(celsius);
            if (celsius <= 0) {
                assertSameSet(
                        GreenspanEnhancement.greenspanIce(Elementary.STRICT),
                        GreenspanEnhancement.hardyIce(Elementary.STRICT),
                        t,
                        Phase.ICE);
            }
            if (celsius <= 0 && celsius >= -50) {
                assertSameSet(
                        GreenspanEnhancement.greenspanSupercooledWater(Elementary.STRICT),
                        GreenspanEnhancement.hardySupercooledWater(Elementary.STRICT),
                        t,
                        Phase.WATER);
            }
            if (celsius >= 0) {
                assertSameSet(
                        GreenspanEnhancement.greenspanWater(Elementary.STRICT),
                        GreenspanEnhancement.hardyWater(Elementary.STRICT),
                        t,
                        Phase.WATER);
            }
        }
    }

    private void assertSameSet(Enhancement greenspan, Enhancement hardySet, Temperature t, Phase phase) {
        double e = hardy.saturation(t, phase).pascals();
        double p = Math.max(Pressure.STANDARD.pascals(), e);
        double expected = Math.exp(greenspan.logAt(t.kelvin(), Math.log(e), e, p));
        assertEquals(
                expected,
                Math.exp(hardySet.logAt(t.kelvin(), Math.log(e), e, p)),
                2e-8,
                () -> phase + " at " + t.celsius());
    }

    private static double factor(MoistAir air, Figures.Row row) {
        Temperature t = Air.celsius(row.number("t_C"));
        return air.enhancement(t, Air.pascals(row.number("p_Pa")), Air.phase(row.text("phase")));
    }

    private static String name(Figures.Row row) {
        return row.text("formulation") + " " + row.text("phase") + " " + row.text("t_C") + " °C " + row.text("p_Pa")
                + " Pa";
    }
}
