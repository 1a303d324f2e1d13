// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Each coefficient was entered twice by different hands: in the formula, and in {@code formulations.csv} with the
 * public text where it was read. A check value does not pin every digit; this does.
 */
class CoefficientsTest {
    private static final Elementary MATH = Elementary.STRICT;

    private static final Map<String, Saturation> SATURATIONS = Map.of(
            "sonntag-1990 water", LogPolynomialSaturation.sonntagWater(MATH),
            "sonntag-1990 ice", LogPolynomialSaturation.sonntagIce(MATH),
            "hardy-1998 water", LogPolynomialSaturation.hardyWater(MATH),
            "hardy-1998 ice", LogPolynomialSaturation.hardyIce(MATH));

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
