// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
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
