// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.quantity.Phase;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Each coefficient was entered twice by different hands: in the formula, and in {@code formulations.csv} with the
 * public text where it was read. A check value does not pin every digit; this does.
 */
class CoefficientsTest {
    private static final Elementary MATH = Elementary.STRICT;

    private static final Map<String, Saturation> SATURATIONS = Map.of(
            "hyland-wexler-1983 water", LogPolynomialSaturation.hylandWexlerWater(),
            "hyland-wexler-1983 ice", LogPolynomialSaturation.hylandWexlerIce(),
            "sonntag-1990 water", LogPolynomialSaturation.sonntagWater(),
            "sonntag-1990 ice", LogPolynomialSaturation.sonntagIce(),
            "hardy-1998 water", LogPolynomialSaturation.hardyWater(),
            "hardy-1998 ice", LogPolynomialSaturation.hardyIce());

    private static final Map<String, Enhancement> ENHANCEMENTS = Map.of(
            "enh-greenspan-1976 water 0..100 degC", GreenspanEnhancement.greenspanWater(MATH),
            "enh-greenspan-1976 ice -100..0 degC", GreenspanEnhancement.greenspanIce(MATH),
            "enh-hardy-1998 water 0..100 degC", GreenspanEnhancement.hardyWater(MATH),
            "enh-hardy-1998 water -50..0 degC", GreenspanEnhancement.hardySupercooledWater(MATH),
            "enh-hardy-1998 ice -100..0 degC", GreenspanEnhancement.hardyIce(MATH));

    @TestFactory
    Stream<DynamicTest> saturation_coefficients_are_those_of_the_source() {
        return rows(SATURATIONS)
                .map(row -> dynamicTest(name(row), () -> {
                    LogPolynomialSaturation formula = (LogPolynomialSaturation) Figures.named(SATURATIONS, key(row));
                    double ours = Figures.named(POWERS, row.text("symbol")).applyAsDouble(formula);
                    assertEquals(row.number("value"), ours, 0, row::toString);
                }));
    }

    @TestFactory
    Stream<DynamicTest> no_saturation_coefficient_is_ours_alone() {
        return SATURATIONS.keySet().stream()
                .map(key -> dynamicTest(key, () -> {
                    List<String> printed = rows(Map.of(key, key))
                            .map(row -> row.text("symbol"))
                            .toList();
                    POWERS.forEach((symbol, ours) -> {
                        if (!printed.contains(symbol)) {
                            assertEquals(
                                    0,
                                    ours.applyAsDouble((LogPolynomialSaturation) Figures.named(SATURATIONS, key)),
                                    0,
                                    symbol);
                        }
                    });
                }));
    }

    @TestFactory
    Stream<DynamicTest> enhancement_coefficients_are_those_of_the_source() {
        return rows(ENHANCEMENTS)
                .map(row -> dynamicTest(name(row), () -> {
                    GreenspanEnhancement formula = (GreenspanEnhancement) Figures.named(ENHANCEMENTS, key(row));
                    assertEquals(row.number("value"), coefficient(formula, row.text("symbol")), 0, row::toString);
                }));
    }

    @TestFactory
    Stream<DynamicTest> constants_of_the_other_formulas_are_those_of_the_source() {
        return rows(CONSTANTS)
                .map(row -> dynamicTest(name(row), () -> {
                    double ours = Figures.named(Figures.named(CONSTANTS, key(row)), row.text("symbol"));
                    assertEquals(row.number("value"), ours, 0, row::toString);
                }));
    }

    @Test
    void constants_of_psychrometer_and_mixture_are_those_of_the_source() {
        assertEquals(printed("A_w"), Psychrometer.assmannWater().coefficient(), 0);
        assertEquals(printed("B_w"), Psychrometer.assmannWater().perDegree(), 0);
        assertEquals(printed("epsilon"), Water.MASS_RATIO, 0);
        double t = 31;
        double w = 0.017;
        double enthalpy = printed("cp_da") * t + w * (printed("h_fg0") + printed("cp_v") * t);
        HumidAir air = MoistAir.by(Formulation.DEFAULT)
                .at(Air.celsius(t), Air.pascals(101_325))
                .withMixingRatio(w);
        assertEquals(enthalpy * 1e3, air.enthalpy(), 1e-7);
    }

    @Test
    void the_first_guess_is_by_the_inversion_that_hardy_prints() {
        double x = 7.1;
        for (Phase deposit : Phase.values()) {
            String name = deposit == Phase.WATER ? "dew" : "frost";
            double expected = inversion(name, "c", x) / inversion(name, "d", x);
            assertEquals(expected, FirstGuess.kelvin(x, deposit), 1e-11 * expected, name);
        }
    }

    private static double inversion(String phase, String letter, double x) {
        return Figures.of("formulations.csv", row -> key(row).equals("hardy-1998-inverse " + phase)).stream()
                .filter(row -> row.text("symbol").startsWith(letter))
                .mapToDouble(row -> row.number("value")
                        * Math.pow(x, Double.parseDouble(row.text("symbol").substring(1))))
                .sum();
    }

    private static double printed(String symbol) {
        return Figures.of(
                        "formulations.csv",
                        row -> row.is("symbol", symbol)
                                && row.text("formulation").matches("psychrometer-coefficient|ashrae-2017.*"))
                .get(0)
                .number("value");
    }

    private static final Map<String, Map<String, Double>> CONSTANTS = Map.of(
            "iapws-sr1-86 water",
            Map.ofEntries(
                    entry("a1", IapwsWaterSaturation.A1),
                    entry("a2", IapwsWaterSaturation.A2),
                    entry("a3", IapwsWaterSaturation.A3),
                    entry("a4", IapwsWaterSaturation.A4),
                    entry("a5", IapwsWaterSaturation.A5),
                    entry("a6", IapwsWaterSaturation.A6),
                    entry("e1", 1.0), // the exponents stand in the shape of the formula
                    entry("e2", 1.5),
                    entry("e3", 3.0),
                    entry("e4", 3.5),
                    entry("e5", 4.0),
                    entry("e6", 7.5),
                    entry("Tc", IapwsWaterSaturation.CRITICAL_KELVIN),
                    entry("pc", IapwsWaterSaturation.CRITICAL_PASCALS)),
            "iapws-r14-08 ice",
            Map.of(
                    "a1", IapwsIceSaturation.A1,
                    "a2", IapwsIceSaturation.A2,
                    "a3", IapwsIceSaturation.A3,
                    "b1", IapwsIceSaturation.B1,
                    "b2", IapwsIceSaturation.B2,
                    "b3", IapwsIceSaturation.B3,
                    "Tt", IapwsIceSaturation.TRIPLE_KELVIN,
                    "pt", IapwsIceSaturation.TRIPLE_PASCALS),
            "wmo-no8-magnus water",
            magnus((MagnusSaturation) MagnusSaturation.water()),
            "wmo-no8-magnus ice",
            magnus((MagnusSaturation) MagnusSaturation.ice()),
            "enh-wmo-no8 water/ice",
            Map.of("f0", WmoEnhancement.F0, "f1", WmoEnhancement.F1, "f2", WmoEnhancement.F2));

    private static Map<String, Double> magnus(MagnusSaturation formula) {
        return Map.of("A", formula.scale(), "a", formula.a(), "b", formula.b());
    }

    static double coefficient(GreenspanEnhancement formula, String symbol) {
        Cubic cubic = symbol.startsWith("A") ? formula.alpha() : formula.logBeta();
        return switch (symbol.charAt(1)) {
            case '0' -> cubic.c0();
            case '1' -> cubic.c1();
            case '2' -> cubic.c2();
            case '3' -> cubic.c3();
            default -> throw new IllegalArgumentException(symbol);
        };
    }

    private static final Map<String, ToDoubleFunction<LogPolynomialSaturation>> POWERS = Map.of(
            "c_m2", formula -> formula.coefficient(-2),
            "c_m1", formula -> formula.coefficient(-1),
            "c_0", formula -> formula.coefficient(0),
            "c_1", formula -> formula.coefficient(1),
            "c_2", formula -> formula.coefficient(2),
            "c_3", formula -> formula.coefficient(3),
            "c_4", formula -> formula.coefficient(4),
            "c_ln", LogPolynomialSaturation::logCoefficient);

    private static Stream<Figures.Row> rows(Map<String, ?> formulas) {
        return Figures.of("formulations.csv", row -> formulas.containsKey(key(row))).stream();
    }

    private static String key(Figures.Row row) {
        return row.text("formulation") + " " + row.text("phase");
    }

    private static String name(Figures.Row row) {
        return key(row) + " " + row.text("symbol") + ", " + row.text("source");
    }
}
