// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Nothing is clamped and nothing is NaN: what no source vouches for is refused with its numbers. */
class OutsideRangeTest {
    private static final Pressure P = Pressure.STANDARD;
    private final MoistAir sonntag = MoistAir.by(Formulation.SONNTAG_1990);
    private final MoistAir hardy = MoistAir.by(Formulation.HARDY_1998);

    @Test
    void saturation_beyond_the_formula_names_formula_range_and_question() {
        OutsideRange refused = refused(() -> sonntag.saturation(Air.celsius(0.02), Phase.ICE));
        assertEquals(0.02, refused.asked(), 1e-9);
        assertEquals(-100, refused.lowest());
        assertEquals(0.01, refused.highest());
        assertEquals("°C", refused.unit());
        assertEquals(
                "saturation over ice after Sonntag 1990 holds from -100 to 0.01 °C, was asked at 0.02 °C",
                refused.getMessage());
        assertTrue(refused(() -> hardy.saturation(Air.celsius(-50.1), Phase.WATER))
                .what()
                .contains("Hardy"));
        refused(() -> sonntag.saturation(Air.celsius(100.1), Phase.WATER));
    }

    @Test
    void dew_and_frost_points_beyond_the_enhancement_factors_are_refused() {
        refused(() -> sonntag.vapourPressure(Air.dew(-50.1), P));
        refused(() -> sonntag.vapourPressure(Air.frost(0.02), P));
        refused(() -> sonntag.relativeHumidity(Air.dew(10), P, Air.celsius(-51), P));
        refused(() -> sonntag.enhancement(Air.celsius(20), Air.pascals(2.1e6), Phase.WATER));
        refused(() -> sonntag.enhancement(Air.celsius(-20), Air.pascals(9_000), Phase.ICE));
    }

    @Test
    void vapour_outside_every_dew_or_frost_point_is_refused() {
        OutsideRange tooDry = refused(() -> sonntag.dewPoint(Air.pascals(1), P, Phase.WATER));
        assertEquals(1, tooDry.asked(), 1e-12);
        assertEquals("Pa", tooDry.unit());
        assertTrue(tooDry.lowest() > 6 && tooDry.lowest() < 7, tooDry::getMessage);
        refused(() -> sonntag.dewPoint(Air.pascals(0), P, Phase.ICE));
        refused(() -> sonntag.dewPoint(Air.pascals(700), P, Phase.ICE));
        refused(() -> sonntag.dewPoint(Air.percent(0), Air.celsius(20), P, P, Phase.WATER));
    }

    @Test
    void air_cannot_hold_more_vapour_than_its_total_pressure() {
        refused(() -> sonntag.dewPoint(Air.pascals(102_000), P, Phase.WATER));
        refused(() -> sonntag.vapourPressure(Air.dew(99), Air.pascals(80_000)));
        refused(() -> sonntag.vapourPressure(Air.dew(20), Air.pascals(0)));
        refused(() -> sonntag.relativeHumidity(Air.dew(20), P, Air.celsius(99), Air.pascals(80_000)));
    }

    @Test
    void supercooled_water_is_refused_where_a_source_says_nothing_about_it() {
        for (Formulation by : List.of(Formulation.IAPWS, Formulation.HYLAND_WEXLER_1983)) {
            MoistAir air = MoistAir.by(by);
            refused(() -> air.saturation(Air.celsius(-1), Phase.WATER));
            refused(() -> air.vapourPressure(Air.dew(-1), P));
            refused(() -> air.relativeHumidity(Air.frost(-10), P, Air.celsius(-5), P));
            refused(() -> air.dewPoint(Air.pascals(300), P, Phase.WATER));
        }
        MoistAir magnus = MoistAir.by(Formulation.WMO_MAGNUS);
        refused(() -> magnus.saturation(Air.celsius(61), Phase.WATER));
        refused(() -> magnus.saturation(Air.celsius(-66), Phase.ICE));
        refused(() -> magnus.enhancement(Air.celsius(20), Air.pascals(111_000), Phase.WATER));
    }

    @Test
    void measures_that_no_air_can_have_are_refused() {
        Surroundings room = sonntag.at(Air.celsius(23), P);
        refused(() -> room.withSpecificHumidity(1));
        refused(() -> room.withVolumeFraction(1.01));
        refused(() -> room.withVapourPressure(Air.pascals(101_326)));
        refused(() -> room.withRelativeHumidityOverIce(Air.percent(50)));
        refused(() -> room.withWetBulb(Air.celsius(1), Psychrometer.assmannWater()));
        assertThrows(IllegalArgumentException.class, () -> room.withMixingRatio(-1e-9));
        assertThrows(IllegalArgumentException.class, () -> room.withAbsoluteHumidity(Double.NaN));
    }

    @Test
    void measures_that_a_state_does_not_have_are_refused() {
        HumidAir dry = sonntag.at(Air.celsius(23), P).withVolumeFraction(0);
        refused(dry::dewPoint);
        refused(dry::frostPoint);
        refused(dry::relativeHumidityOverIce);
        HumidAir steam = sonntag.at(Air.celsius(23), P).withVolumeFraction(1);
        refused(steam::mixingRatio);
        refused(() -> sonntag.at(Air.celsius(40), P).withVolumeFraction(0.01).density());
        refused(() -> sonntag.at(Air.celsius(20), Air.pascals(120_000))
                .withVolumeFraction(0.01)
                .density());
    }

    @CanIgnoreReturnValue
    private static OutsideRange refused(Executable question) {
        return assertThrows(OutsideRange.class, question);
    }
}
