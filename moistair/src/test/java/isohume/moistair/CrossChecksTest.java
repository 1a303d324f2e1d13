// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.quantity.Phase;
import isohume.quantity.Temperature;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What is printed about the formulas, and formulas that are not offered, beside those that are. */
class CrossChecksTest {
    private static final Map<String, Formulation> NAMES = Map.of(
            "sonntag-1990", Formulation.SONNTAG_1990,
            "hardy-1998", Formulation.HARDY_1998,
            "hyland-wexler-1983", Formulation.HYLAND_WEXLER_1983,
            "iapws-sr1-86", Formulation.IAPWS,
            "iapws-r14-08", Formulation.IAPWS,
            "wmo-no8-magnus", Formulation.WMO_MAGNUS);

    /** Guildner, Johnson and Jones 1976: (611.657 ± 0.010) Pa (temperature_fixed_points.csv); 0.01 % is the formulas'. */
    @TestFactory
    Stream<DynamicTest> every_formula_but_magnus_meets_the_vapour_pressure_measured_at_the_triple_point() {
        double kelvin = fixed("triple point of water, ITS-90");
        double measured = fixed("vapour pressure at the water triple point (experimental)");
        double doubt = fixed("uncertainty of the triple-point vapour pressure");
        return Stream.of(Formulation.values())
                .filter(by -> by != Formulation.WMO_MAGNUS)
                .map(by -> dynamicTest(by.toString(), () -> {
                    Temperature triple = Temperature.ofKelvin(kelvin);
                    for (Phase phase : Phase.values()) {
                        double found = MoistAir.by(by).saturation(triple, phase).pascals();
                        assertEquals(measured, found, doubt + 1e-4 * measured, by + " over " + phase);
                    }
                }));
    }

    @Test
    void the_iapws_formula_boils_where_its_release_says() {
        Temperature boiling = Temperature.ofKelvin(fixed("normal boiling point (101325 Pa), SR1-86"));
        double found =
                MoistAir.by(Formulation.IAPWS).saturation(boiling, Phase.WATER).pascals();
        assertEquals(101_325, found, 101_325 * 3.6e-2 * 0.00005, "half of the last digit, 0.1 mK, is 1.8e-6 of e");
    }

    @Test
    void zero_celsius_is_the_ice_point() {
        Figures.Row ice = Figures.fromMemory("temperature_fixed_points.csv", row -> row.is("point", "ice point"))
                .getFirst();
        assertEquals(ice.number("value"), Air.celsius(0).kelvin(), "from memory, and by definition");
    }

    private static double fixed(String point) {
        return Figures.of("temperature_fixed_points.csv", row -> row.is("point", point))
                .getFirst()
                .number("value");
    }

    /** Ranges as printed (formulation_meta.csv). Hardy's for water is carried on to -50 °C, with an uncertainty of its own. */
    @TestFactory
    Stream<DynamicTest> no_formula_is_used_outside_the_range_that_its_source_prints() {
        return Figures.all("formulation_meta.csv").stream()
                .filter(row -> NAMES.containsKey(row.text("formulation")) && row.is("range_provenance", "read"))
                .map(row -> dynamicTest(row.text("formulation") + " over " + row.text("phase"), () -> {
                    FormulaSet set = FormulaSet.of(Figures.named(NAMES, row.text("formulation")), Elementary.STRICT);
                    Span span = set.saturation(Air.phase(row.text("phase"))).vouchedFor();
                    boolean carriedOn = row.is("formulation", "hardy-1998") && row.is("phase", "water");
                    double lowest = carriedOn ? -50 : row.number("t_min_C");
                    assertTrue(span.lowestCelsius() >= lowest - 1e-9, row + " from " + span.lowestCelsius());
                    assertTrue(
                            span.highestCelsius() <= row.number("t_max_C") + 1e-9,
                            row + " to " + span.highestCelsius());
                }));
    }

    /** Rows of the comparison with IAPWS for which the formula's own source does not stand (saturation_outside.csv). */
    @TestFactory
    Stream<DynamicTest> where_a_source_does_not_stand_for_its_formula_there_is_no_value() {
        return Figures.of(
                        "saturation_outside.csv",
                        row -> row.is("inside_published_range", "no") && !row.is("formulation", "hardy-1998"))
                .stream()
                .map(row -> dynamicTest(
                        row.text("formulation") + " over " + row.text("phase") + " at " + row.text("t90_C") + " °C",
                        () -> assertThrows(
                                OutsideRange.class,
                                () -> MoistAir.by(Figures.named(NAMES, row.text("formulation")))
                                        .saturation(Air.celsius(row.number("t90_C")), Air.phase(row.text("phase"))))));
    }

    /** Frost points by Murphy and Koop 2005 over water and IAPWS R14-08 over ice; neither is the formula under test. */
    @TestFactory
    Stream<DynamicTest> frost_points_of_supercooled_dew_points_are_another_pair_of_formulas_within_what_is_stated() {
        return Figures.of("dew_frost_cross_check.csv", row -> true).stream()
                .flatMap(row -> Stream.of(Formulation.SONNTAG_1990, Formulation.HARDY_1998)
                        .map(by -> dynamicTest(by + " " + row.text("input"), () -> {
                            double dew = Double.parseDouble(row.text("input").replaceAll("t_d=(-?\\d+) .*", "$1"));
                            Temperature frost = Air.celsius(row.number("value"));
                            MoistAir air = MoistAir.by(by);
                            double overWater = air.saturation(Air.celsius(dew), Phase.WATER)
                                    .pascals();
                            double overIce = air.saturation(frost, Phase.ICE).pascals();
                            double stated = air.saturationUncertainty(Air.celsius(dew), Phase.WATER)
                                            .relative()
                                    + air.saturationUncertainty(frost, Phase.ICE)
                                            .relative()
                                    + 2e-3; // IAPWS R14-08's own, as remembered
                            assertEquals(1, overWater / overIce, stated, row::toString);
                        })));
    }

    /** The virial model of Hyland and Wexler 1983, whose molar mass is 33 ppm smaller and whose tables have five digits. */
    @TestFactory
    Stream<DynamicTest> density_is_near_hyland_and_wexler_s_virial_model() {
        return Figures.of("density_cross_check.csv", row -> true).stream()
                .map(row -> dynamicTest(row.text("quantity") + " " + row.text("humidity_value"), () -> {
                    double rho = CipmDensity.at(
                            Air.celsius(row.number("t_C")).kelvin(),
                            row.number("p_Pa"),
                            CipmDensity.vapourFraction(
                                    row.number("humidity_value"),
                                    Air.celsius(row.number("t_C")).kelvin(),
                                    row.number("p_Pa")),
                            0.0004);
                    assertEquals(row.number("value"), rho, 1e-4 * rho, row::toString);
                }));
    }

    /**
     * The handbook's A·exp(B/T), generally within 2 % RH as it says itself. Two constants do not bend with the polynomials
     * in the cold: at 5 °C Mg(NO3)2 is 3.1 % RH off, at 0 °C KNO3 2.2, so it is compared from 15 °C up.
     */
    @TestFactory
    Stream<DynamicTest> salts_are_near_a_handbook_s_coarser_formula() {
        return Figures.of("salt_crc.csv", row -> row.is("symbol", "A")).stream()
                .map(row -> dynamicTest(row.text("salt"), () -> {
                    SaturatedSalt salt = SaturatedSaltTest.salt(row);
                    double b = Figures.of(
                                    "salt_crc.csv",
                                    other -> other.is("salt", row.text("salt")) && other.is("symbol", "B"))
                            .getFirst()
                            .number("value");
                    double from = Math.max(
                            Math.max(15, row.number("t_min_C")), salt.coldest().celsius());
                    double to = Math.min(row.number("t_max_C"), salt.warmest().celsius());
                    for (double t = from; t <= to; t += 5) {
                        double coarse = row.number("value")
                                * Math.exp(b / Air.celsius(t).kelvin());
                        assertEquals(
                                coarse, salt.relativeHumidity(Air.celsius(t)).percent(), 2, row + " at " + t);
                    }
                }));
    }
}
