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

    /** Table 2 of Greenspan 1977, values and uncertainties; the polynomials differ from it by rounding. */
    @TestFactory
    Stream<DynamicTest> salts_are_as_remembered() {
        return Figures.fromMemory("salt_fixed_points.csv", SaturatedSaltTest::isInside).stream()
                .map(row -> dynamicTest(row.text("salt") + " " + row.text("t_C"), () -> {
                    assertEquals(row.number("rh_percent"), SaturatedSaltTest.found(row), 0.02, row::toString);
                    double uncertainty = SaturatedSaltTest.salt(row).uncertaintyPercent(Air.celsius(row.number("t_C")));
                    assertEquals(row.number("uncertainty_percent_rh"), uncertainty, 1e-9, row::toString);
                }));
    }

    /** WMO-No. 8, Annex 4.B. */
    @TestFactory
    Stream<DynamicTest> the_ice_bulb_coefficient_is_as_remembered() {
        return Figures.fromMemory("formulations.csv", row -> row.is("symbol", "A_i")).stream()
                .map(row -> dynamicTest(
                        row.text("symbol"),
                        () -> assertEquals(
                                row.number("value"), Psychrometer.assmannIce().coefficient(), 0, row::toString)));
    }

    @TestFactory
    Stream<DynamicTest> polynomials_of_salts_with_a_remembered_coefficient_are_as_remembered() {
        return SaturatedSaltTest.polynomials(true)
                .map(salt -> dynamicTest(salt, () -> SaturatedSaltTest.assertCoefficients(salt)));
    }

    /** The molar mass of water in CIPM-2007; public code quotes 18.015e-3 and 18.0152817e-3 as well. */
    @TestFactory
    Stream<DynamicTest> the_molar_mass_of_water_in_cipm_2007_is_as_remembered() {
        return Figures.fromMemory("formulations.csv", row -> row.is("symbol", "Mv")).stream()
                .map(row -> dynamicTest(
                        row.text("symbol"),
                        () -> assertEquals(row.number("value"), CipmDensity.MOLAR_MASS_WATER, 0, row::toString)));
    }
}
