// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Phase;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Mistyped coefficients that are about in public code, each with the reason why ours is the right one. The cases are
 * those of {@code typo_watch.csv} that touch a formula used here.
 */
class TypoWatchTest {
    private static final Elementary MATH = Elementary.STRICT;

    /** What each row is about, in the order of the table: a test below, or no formula of this program. */
    private static final List<String> ROWS = List.of(
            "sonntag-1990 water constant for hPa",
            "sonntag-1990 ice constant for hPa",
            "sonntag-1990 ice exponent",
            "wexler-1976 water c_4, which is not used",
            "wmo-no8-magnus water a",
            "iapws-sr1-86 a3",
            "iapws-sr1-86 e6",
            "murphy-koop-2005 logarithm, which is not used",
            "enh-sonntag-1994 water bracket, which is not used",
            "enh-buck-1981-fw3 phase, which is not used",
            "enh-hardy-1998 ice coefficient set",
            "enh-hardy-1998 water -50..0 A0",
            "Greenspan 1977 salts LiCl a1",
            "Greenspan 1977 salts K2CO3 a1",
            "Greenspan 1977 salts CH3COOK a2",
            "ITS-90 scale factor, which is not used",
            "temperature 0 degC",
            "hyland-wexler-1983 paper table misprints, which is not used",
            "wmo-no49-goff-1957 supercooled formula in WMO text, which is not used");

    @Test
    void every_watched_typing_error_is_either_tested_here_or_of_a_formula_that_is_not_used() {
        List<String> watched = Figures.all("typo_watch.csv").stream()
                .map(row -> row.text("formulation") + " " + row.text("item"))
                .toList();
        assertEquals(
                watched,
                ROWS.stream().map(row -> row.replace(", which is not used", "")).toList());
    }

    /** ln 100 below 21.2409642 is 16.635794, not 16.635764; c_1 ends in 193, not 1933. */
    @Test
    void sonntag_over_water_has_the_constant_that_is_16_635794_for_hectopascals() {
        LogPolynomialSaturation water = (LogPolynomialSaturation) LogPolynomialSaturation.sonntagWater();
        assertEquals(16.635794, water.coefficient(0) - Math.log(100), 5e-7);
        assertEquals(-2.711193e-2, water.coefficient(1), 0);
    }

    /** For hectopascals 24.7219; 24.721994 and 24.72219 are about, and an extra 1 in the exponent. */
    @Test
    void sonntag_over_ice_has_the_constant_that_is_24_7219_for_hectopascals() {
        LogPolynomialSaturation ice = (LogPolynomialSaturation) LogPolynomialSaturation.sonntagIce();
        assertEquals(24.7219, ice.coefficient(0) - Math.log(100), 5e-6);
        assertEquals(611.657, Math.exp(ice.logAt(273.16)), 0.010); // Guildner, Johnson and Jones 1976
    }

    /** 17.62 goes with 243.12; 17.67 is Bolton's and goes with 243.5. */
    @Test
    void magnus_is_not_mixed_with_bolton() {
        MagnusSaturation water = (MagnusSaturation) MagnusSaturation.water();
        assertEquals(17.62, water.a(), 0);
        assertEquals(243.12, water.b(), 0);
    }

    /** -11.7866497, not -11.7866487; last exponent 7.5, not 7, which would be 1.5 % at 20 °C. */
    @Test
    void the_iapws_equation_has_its_third_coefficient_and_its_last_exponent() {
        assertEquals(-11.7866497, IapwsWaterSaturation.A3, 0);
        double reference = 2339.31818333; // IAPWS-95 at 20 °C by python3-iapws
        double ours = MoistAir.by(Formulation.IAPWS)
                .saturation(Air.celsius(20), Phase.WATER)
                .pascals();
        assertEquals(reference, ours, 75e-6 * reference);
    }

    /** The narrow set for -50..0 °C, used down to -100, would give 1.0119 there; the wide one gives 1.0093. */
    @Test
    void hardys_wide_set_for_ice_is_used_over_its_whole_range() {
        MoistAir hardy = MoistAir.by(Formulation.HARDY_1998);
        assertEquals(1.0093, hardy.enhancement(Air.celsius(-100), Air.pascals(100_000), Phase.ICE), 5e-5);
    }

    /** -5.5898101e-2 and -5.5898100e-2 are both read; Greenspan's set expanded in kelvin says which. */
    @Test
    void hardys_constant_for_supercooled_water_is_what_greenspans_expands_to() {
        Cubic celsius = ((GreenspanEnhancement) GreenspanEnhancement.greenspanSupercooledWater(MATH)).alpha();
        Cubic kelvin = ((GreenspanEnhancement) GreenspanEnhancement.hardySupercooledWater(MATH)).alpha();
        assertEquals(celsius.at(-Celsius.ZERO), kelvin.c0(), 5e-10);
    }

    /** The signs that public copies of the salt polynomials have wrong, against the printed table at 20 °C. */
    @Test
    void salts_have_the_signs_that_reproduce_the_table() {
        assertEquals(
                11.3,
                SaturatedSalt.LITHIUM_CHLORIDE.relativeHumidity(Air.celsius(20)).percent(),
                0.05);
        double cold = SaturatedSalt.POTASSIUM_CARBONATE
                .relativeHumidity(Air.celsius(5))
                .percent();
        double warm = SaturatedSalt.POTASSIUM_CARBONATE
                .relativeHumidity(Air.celsius(25))
                .percent();
        assertTrue(warm > cold, () -> cold + " to " + warm);
        double acetate = SaturatedSalt.POTASSIUM_ACETATE
                .relativeHumidity(Air.celsius(20))
                .percent();
        assertEquals(23.1, acetate, 0.1); // remembered table; the other sign would give 28
    }

    /** 273.15 K, not 273.16 K, is 0 °C. */
    @Test
    void zero_celsius_is_not_the_triple_point() {
        assertEquals(273.15, Celsius.ZERO, 0);
        assertNotEquals(IapwsIceSaturation.TRIPLE_KELVIN, Celsius.ZERO);
    }
}
