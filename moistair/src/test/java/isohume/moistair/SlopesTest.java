// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Slopes differentiated by hand against an independent evaluation with thirty digits, and against differences. */
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

    @ParameterizedTest
    @EnumSource
    void saturation_slopes_are_those_of_small_differences(Formulation formulation) {
        FormulaSet formulas = FormulaSet.of(formulation, Elementary.STRICT);
        for (Phase phase : Phase.values()) {
            Saturation saturation = formulas.saturation(phase);
            double low = saturation.vouchedFor().lowestKelvin() + 0.01;
            double high = Math.min(saturation.vouchedFor().highestKelvin(), 473) - 0.01;
            for (double kelvin = low; kelvin < high; kelvin += 0.31) {
                double expected = difference(saturation::logAt, kelvin, 0.01);
                assertEquals(expected, saturation.logSlopeAt(kelvin), 2e-7 * expected, formulation + " " + phase);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void slopes_of_relative_humidity_are_those_of_small_differences(Formulation formulation) {
        MoistAir air = MoistAir.by(formulation);
        for (Phase deposit : Phase.values()) {
            double low = air.coldest(deposit).celsius() + 0.1;
            double high = Math.min(air.warmest(deposit).celsius(), 90) - 0.1;
            for (double celsius = low; celsius < high; celsius += 3.7) {
                assertSlopes(air, new DewPoint(Air.celsius(celsius), deposit), Math.min(59, Math.max(celsius, 0) + 7));
            }
        }
    }

    private static void assertSlopes(MoistAir air, DewPoint point, double t) {
        double pm = 103_000;
        double pc = 101_000;
        HumiditySlopes slopes = air.relativeHumiditySlopes(point, Air.pascals(pm), Air.celsius(t), Air.pascals(pc));
        String where = air.formulation() + " " + point;
        assertSlope(slopes.perPoint(), x -> humidity(air, point, x, pm, t, pc), point.celsius(), 0.01, where);
        assertSlope(slopes.perAirTemperature(), x -> humidity(air, point, point.celsius(), pm, x, pc), t, 0.01, where);
        assertSlope(slopes.perMirrorPressure(), x -> humidity(air, point, point.celsius(), x, t, pc), pm, 10, where);
        assertSlope(slopes.perChamberPressure(), x -> humidity(air, point, point.celsius(), pm, t, x), pc, 10, where);
    }

    private static double humidity(MoistAir air, DewPoint point, double celsius, double pm, double t, double pc) {
        DewPoint moved = new DewPoint(Air.celsius(celsius), point.deposit());
        return air.relativeHumidity(moved, Air.pascals(pm), Air.celsius(t), Air.pascals(pc))
                .fraction();
    }

    private static void assertSlope(double slope, DoubleUnaryOperator function, double x, double step, String where) {
        double expected = difference(function, x, step);
        assertEquals(expected, slope, 1e-6 * Math.abs(expected), where);
    }

    private static double difference(DoubleUnaryOperator function, double x, double step) {
        return (function.applyAsDouble(x + step) - function.applyAsDouble(x - step)) / (2 * step);
    }
}
