// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Figures that somebody remembered and nobody has yet read in print. They show that two memories agree, not that
 * either is right; what is proved about the same numbers stands in the other tests.
 */
class FiguresFromMemoryTest {
    /** Proved otherwise by the identity with Hardy's kelvin set in {@link EnhancementTest}. */
    @TestFactory
    Stream<DynamicTest> greenspans_celsius_set_for_supercooled_water_is_as_remembered() {
        GreenspanEnhancement ours =
                (GreenspanEnhancement) GreenspanEnhancement.greenspanSupercooledWater(Elementary.STRICT);
        return Figures.fromMemory("formulations.csv", row -> row.is("formulation", "enh-greenspan-1976")).stream()
                .map(row -> dynamicTest(row.text("symbol"), () -> {
                    double found = CoefficientsTest.coefficient(ours, row.text("symbol"));
                    assertEquals(row.number("value"), found, 0, row::toString);
                }));
    }
}
