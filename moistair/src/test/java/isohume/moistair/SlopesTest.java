// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.quantity.Phase;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Slopes differentiated by hand against an independent evaluation with thirty digits. */
class SlopesTest {
    private final MoistAir sonntag = MoistAir.by(Formulation.SONNTAG_1990);

    @TestFactory
    Stream<DynamicTest> sensitivities_of_relative_humidity_without_air() {
        return Figures.of("sensitivity_checks.csv", row -> true).stream()
                .map(row ->
                        dynamicTest(row.text("t_C") + " " + row.text("rh_percent") + " " + row.text("quantity"), () -> {
                            double value = row.number("value");
                            assertEquals(value, slope(row), 1e-5 * Math.abs(value), row::toString);
                        }));
    }

    private double slope(Figures.Row row) {
        double perAir = sonntag.saturationSlope(Air.celsius(row.number("t_C")), Phase.WATER);
        if (row.is("rh_percent", "any")) {
            return 100 * perAir;
        }
        double rh = row.number("rh_percent");
        double perDew = sonntag.saturationSlope(Air.celsius(row.number("t_d_C")), Phase.WATER);
        return switch (row.text("quantity")) {
            case "dRH/dT" -> -rh * perAir;
            case "dRH/dTd" -> rh * perDew;
            case "dTd/dRH" -> 1 / (rh * perDew);
            default -> 0.1 * rh * Math.hypot(perAir, perDew);
        };
    }
}
