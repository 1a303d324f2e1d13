// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.quantity.Phase;
import isohume.quantity.Temperature;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Saturation pressures against print and against an evaluation with thirty digits; the source stands in each row. */
class SaturationTest {
    private static final Map<String, Formulation> NAMES = Map.of(
            "sonntag-1990", Formulation.SONNTAG_1990,
            "hardy-1998", Formulation.HARDY_1998,
            "hyland-wexler-1983", Formulation.HYLAND_WEXLER_1983,
            "ashrae-2017-table3", Formulation.HYLAND_WEXLER_1983,
            "iapws-sr1-86", Formulation.IAPWS,
            "iapws-r14-08", Formulation.IAPWS,
            "wmo-no8-magnus", Formulation.WMO_MAGNUS);

    @TestFactory
    Stream<DynamicTest> saturation_pressures_match_print_and_an_independent_evaluation() {
        return Figures.of("saturation_pressure_checks.csv", SaturationTest::isWithinTheRange).stream()
                .map(row -> dynamicTest(name(row), () -> {
                    double value = row.number("value");
                    MoistAir air = MoistAir.by(Figures.named(NAMES, row.text("formulation")));
                    double found = air.saturation(temperature(row), Air.phase(row.text("phase")))
                            .pascals();
                    assertEquals(value, found, value * tolerance(row), row::toString);
                }));
    }

    @TestFactory
    Stream<DynamicTest> no_formula_strays_from_the_iapws_equations_by_more_than_was_found_elsewhere() {
        return Figures.of("saturation_cross_check.csv", row -> true).stream()
                .map(row ->
                        dynamicTest(row.text("formulation") + " " + row.text("phase") + " " + row.text("t90_C"), () -> {
                            double reference = row.number("e_ref_Pa");
                            MoistAir air = MoistAir.by(Figures.named(NAMES, row.text("formulation")));
                            Phase phase = Air.phase(row.text("phase"));
                            double found = air.saturation(Air.celsius(row.number("t90_C")), phase)
                                    .pascals();
                            double ppm = (found / reference - 1) * 1e6;
                            assertEquals(row.number("deviation_ppm"), ppm, 0.1, row::toString);
                        }));
    }

    /** SR1-86 is a fit to the same data as the equation of state IAPWS-95; they were found 75 ppm apart at most. */
    @TestFactory
    Stream<DynamicTest> iapws_sr1_86_is_near_the_equation_of_state_iapws_95() {
        return Figures.of("saturation_pressure_checks.csv", row -> row.is("formulation", "iapws-95")).stream()
                .filter(row -> temperature(row).celsius() >= 0.01)
                .map(row -> dynamicTest(name(row), () -> {
                    double value = row.number("value");
                    MoistAir air = MoistAir.by(Formulation.IAPWS);
                    double found = air.saturation(temperature(row), Phase.WATER).pascals();
                    assertEquals(value, found, value * 75e-6, row::toString);
                }));
    }

    /** Some rows continue a formula beyond what its source vouches for; those are refused here, see OutsideRangeTest. */
    private static boolean isWithinTheRange(Figures.Row row) {
        Formulation by = NAMES.get(row.text("formulation"));
        return by != null
                && FormulaSet.of(by, Elementary.STRICT)
                        .saturation(Air.phase(row.text("phase")))
                        .vouchedFor()
                        .contains(temperature(row).kelvin());
    }

    private static Temperature temperature(Figures.Row row) {
        double value = row.number("input_value");
        return row.is("input_unit", "K") ? Temperature.ofKelvin(value) : Air.celsius(value);
    }

    /** Doubles cannot hold the logarithm of a pressure to thirteen digits. */
    private static double tolerance(Figures.Row row) {
        return Math.max(row.number("tolerance_rel"), 1e-12);
    }

    private static String name(Figures.Row row) {
        return row.text("formulation") + " " + row.text("phase") + " " + row.text("input_value") + " "
                + row.text("input_unit") + ", " + row.text("source");
    }
}
