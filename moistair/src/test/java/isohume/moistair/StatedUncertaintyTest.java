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

/** The budget lines of the formulas: what was read, and that no line is smaller than what others found. */
class StatedUncertaintyTest {
    private static final Map<String, Formulation> NAMES = Map.of(
            "sonntag-1990", Formulation.SONNTAG_1990,
            "hardy-1998", Formulation.HARDY_1998,
            "hyland-wexler-1983", Formulation.HYLAND_WEXLER_1983,
            "iapws-sr1-86", Formulation.IAPWS,
            "iapws-r14-08", Formulation.IAPWS,
            "wmo-no8-magnus", Formulation.WMO_MAGNUS);

    /** NPL's answer on dew point, and ASHRAE Fundamentals 2017, chapter 1: the two statements that were read. */
    @Test
    void the_statements_that_were_read_are_as_printed() {
        MoistAir magnus = MoistAir.by(Formulation.WMO_MAGNUS);
        StatedUncertainty water = magnus.saturationUncertainty(Air.celsius(20), Phase.WATER);
        assertEquals(0.006, water.relative());
        assertEquals(0.003, water.standard(), 1e-15);
        assertEquals(Basis.READ, water.basis());
        assertEquals(
                0.010, magnus.saturationUncertainty(Air.celsius(-20), Phase.ICE).relative());
        MoistAir ashrae = MoistAir.by(Formulation.HYLAND_WEXLER_1983);
        StatedUncertainty limit = ashrae.saturationUncertainty(Air.celsius(150), Phase.WATER);
        assertEquals(3e-4, limit.relative());
        assertEquals(3e-4 / Math.sqrt(3), limit.standard(), 1e-18);
    }

    @Test
    void a_remembered_statement_says_that_it_is_remembered() {
        StatedUncertainty water =
                MoistAir.by(Formulation.SONNTAG_1990).saturationUncertainty(Air.celsius(20), Phase.WATER);
        assertEquals(Basis.MEMORY, water.basis());
        assertEquals(5e-5, water.standard(), 1e-18);
    }

    @Test
    void between_two_points_the_line_is_straight_and_beyond_them_there_is_none() {
        MoistAir hardy = MoistAir.by(Formulation.HARDY_1998);
        double middle =
                hardy.saturationUncertainty(Air.celsius(-49.995), Phase.ICE).relative();
        assertEquals((5e-3 + 2e-4) / 2, middle, 1e-9);
        MoistAir sonntag = MoistAir.by(Formulation.SONNTAG_1990);
        assertThrows(OutsideRange.class, () -> sonntag.saturationUncertainty(Air.celsius(-60), Phase.WATER));
        assertThrows(
                OutsideRange.class,
                () -> sonntag.enhancementUncertainty(Air.celsius(20), Air.pascals(200_000), Phase.WATER));
    }

    /**
     * Deviations from IAPWS-95, IAPWS R14-08 and, for supercooled water, Murphy and Koop 2005, found elsewhere. The
     * references have uncertainties of their own: 0.0125 % (one standard uncertainty of IAPWS-95) is added.
     */
    @TestFactory
    Stream<DynamicTest> no_line_for_saturation_is_smaller_than_the_distance_to_a_better_formula() {
        return Figures.of("saturation_cross_check.csv", row -> true).stream()
                .map(row ->
                        dynamicTest(row.text("formulation") + " " + row.text("phase") + " " + row.text("t90_C"), () -> {
                            MoistAir air = MoistAir.by(Figures.named(NAMES, row.text("formulation")));
                            Temperature t = Air.celsius(row.number("t90_C"));
                            StatedUncertainty stated = air.saturationUncertainty(t, Air.phase(row.text("phase")));
                            double distance = Math.abs(row.number("deviation_ppm")) * 1e-6;
                            assertTrue(stated.relative() + 1.25e-4 >= distance, () -> row + ": " + stated);
                        }));
    }

    @TestFactory
    Stream<DynamicTest> no_line_for_enhancement_is_smaller_than_the_distance_to_a_real_gas_model() {
        return Figures.of(
                        "enhancement_factor_checks.csv",
                        row -> row.text("formulation").matches("RP-1485 virial model|IAPWS G8-10.*"))
                .stream()
                .flatMap(row -> Stream.of(Formulation.SONNTAG_1990, Formulation.HARDY_1998, Formulation.WMO_MAGNUS)
                        .filter(by -> isInside(by, row))
                        .map(by -> dynamicTest(
                                by + " " + row.text("t_C") + " °C " + row.text("p_Pa") + " Pa",
                                () -> assertLineCovers(MoistAir.by(by), row))));
    }

    private static boolean isInside(Formulation by, Figures.Row row) {
        MoistAir air = MoistAir.by(by);
        Phase phase = Air.phase(row.text("phase"));
        double t = row.number("t_C");
        double coldest = by == Formulation.WMO_MAGNUS && phase == Phase.ICE
                ? -60
                : air.coldest(phase).celsius();
        return t >= coldest && t <= air.warmest(phase).celsius();
    }

    private static void assertLineCovers(MoistAir air, Figures.Row row) {
        Temperature t = Air.celsius(row.number("t_C"));
        Phase phase = Air.phase(row.text("phase"));
        double f = air.enhancement(t, Air.pascals(row.number("p_Pa")), phase);
        StatedUncertainty stated = air.enhancementUncertainty(t, Air.pascals(row.number("p_Pa")), phase);
        double distance = Math.abs(f / row.number("f") - 1);
        assertTrue(stated.relative() >= distance, () -> row + ": " + distance + " above " + stated);
    }
}
