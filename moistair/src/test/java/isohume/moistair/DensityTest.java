// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** CIPM-2007 step by step against an independent evaluation, and against two equations of state. */
class DensityTest {
    private static final String FILE = "moist_air_density_checks.csv";

    @TestFactory
    Stream<DynamicTest> each_step_matches_an_independent_evaluation() {
        return Figures.of(FILE, row -> row.is("formulation", "cipm-2007") && row.is("provenance", "computed")).stream()
                .map(row -> dynamicTest(name(row), () -> {
                    double tolerance = row.number("tolerance_rel") * Math.abs(row.number("value"));
                    assertEquals(row.number("value"), found(row), tolerance, row::toString);
                }));
    }

    /** The distances were found elsewhere: different molar masses of air and gas constants. */
    @TestFactory
    Stream<DynamicTest> equal_mole_fractions_give_nearly_the_density_of_two_equations_of_state() {
        return Figures.of(
                        FILE,
                        row -> !row.is("formulation", "cipm-2007")
                                && row.text("source").matches(".*(CoolProp|iapws).*"))
                .stream()
                .map(row -> dynamicTest(name(row), () -> {
                    HumidAir air = MoistAir.by(Formulation.DEFAULT)
                            .at(Air.celsius(row.number("t_C")), Air.pascals(row.number("p_Pa")))
                            .withVolumeFraction(row.number("humidity_value"));
                    assertEquals(row.number("value"), air.density(), 45e-6 * row.number("value"), row::toString);
                }));
    }

    /** The constants a second time, from the table of what was read, in the equation as it is printed. */
    @Test
    void constants_are_those_of_the_source() {
        Map<String, Double> c = Figures.all("formulations.csv").stream()
                .filter(row -> row.is("formulation", "cipm-2007") || row.is("formulation", "enh-cipm-2007"))
                .collect(Collectors.toMap(row -> row.text("symbol"), row -> row.number("value")));
        for (double t = 15; t <= 27; t += 1.5) {
            double kelvin = Air.celsius(t).kelvin();
            double p = 60_000 + 4_000 * (t - 15);
            double psv = Math.exp(c(c, "A") * kelvin * kelvin + c(c, "B") * kelvin + c(c, "C") + c(c, "D") / kelvin);
            assertEquals(psv, CipmDensity.saturation(kelvin), 1e-12 * psv);
            double f = c(c, "alpha") + c(c, "beta") * p + c(c, "gamma") * t * t;
            assertEquals(f, CipmDensity.enhancement(kelvin, p), 1e-13);
            double x = 0.9 * f * psv / p;
            double z = 1
                    - p / kelvin * (c(c, "a0") + c(c, "a1") * t + c(c, "a2") * t * t)
                    - p / kelvin * ((c(c, "b0") + c(c, "b1") * t) * x + (c(c, "c0") + c(c, "c1") * t) * x * x)
                    + Math.pow(p / kelvin, 2) * (c(c, "d") + c(c, "e") * x * x);
            assertEquals(z, CipmDensity.compressibility(kelvin, p, x), 1e-13);
            double ma = c(c, "Ma0") + c(c, "Ma1") * (0.00042 - c(c, "xCO2_ref"));
            double rho = p * ma / (z * c(c, "R") * kelvin) * (1 - x * (1 - c(c, "Mv") / ma));
            assertEquals(rho, CipmDensity.at(kelvin, p, x, 0.00042), 1e-12);
        }
    }

    private static double c(Map<String, Double> constants, String symbol) {
        return Figures.named(constants, symbol);
    }

    private static double found(Figures.Row row) {
        double kelvin = Air.celsius(row.number("t_C")).kelvin();
        double p = row.number("p_Pa");
        double vapour = CipmDensity.vapourFraction(row.number("humidity_value"), kelvin, p);
        double co2 = Double.parseDouble(row.text("note").replaceFirst(".*xCO2=", ""));
        return switch (row.text("quantity")) {
            case "psv" -> CipmDensity.saturation(kelvin);
            case "f" -> CipmDensity.enhancement(kelvin, p);
            case "xv" -> vapour;
            case "Z" -> CipmDensity.compressibility(kelvin, p, vapour);
            default -> CipmDensity.at(kelvin, p, vapour, co2);
        };
    }

    private static String name(Figures.Row row) {
        return row.text("formulation") + " " + row.text("t_C") + " °C " + row.text("p_Pa") + " Pa "
                + row.text("humidity_value") + " " + row.text("quantity");
    }
}
