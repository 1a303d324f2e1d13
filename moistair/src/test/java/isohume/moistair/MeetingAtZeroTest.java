// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** At 0 °C the enhancement set for supercooled water hands over to the one for water, at 0.01 °C ice to water. */
class MeetingAtZeroTest {
    private final MoistAir sonntag = MoistAir.by(Formulation.SONNTAG_1990);

    @ParameterizedTest
    @ValueSource(doubles = {60_000, 101_325, 154_000, 300_000, 1_000_000})
    void the_two_sets_meet_within_a_few_millionths(double pascals) {
        Pressure total = Air.pascals(pascals);
        double below = sonntag.enhancement(Air.celsius(-1e-9), total, Phase.WATER);
        double above = sonntag.enhancement(Air.celsius(0), total, Phase.WATER);
        assertTrue(Math.abs(below - above) < 6e-5, () -> below + " and " + above);
        if (pascals <= 110_000) {
            assertEquals(above, below, 6e-6);
        }
    }

    /** Where the sets overlap and where they leave a gap, each vapour pressure still has one dew point. */
    @ParameterizedTest
    @CsvSource({"101325, 1e-9", "1000000, 6e-5"})
    void every_vapour_pressure_around_the_meeting_has_a_dew_point(double pascals, double gap) {
        Pressure total = Air.pascals(pascals);
        double atZero = sonntag.vapourPressure(Air.dew(0), total).pascals();
        double last = Double.NEGATIVE_INFINITY;
        for (double relative = -3e-4; relative <= 3e-4; relative += 1e-7) {
            Pressure vapour = Air.pascals(atZero * (1 + relative));
            DewPoint found = sonntag.dewPoint(vapour, total, Phase.WATER);
            double again = sonntag.vapourPressure(found, total).pascals();
            assertEquals(vapour.pascals(), again, gap * again, () -> found + " for " + vapour);
            assertTrue(found.celsius() >= last, () -> "dew points fall at " + vapour);
            last = found.celsius();
        }
    }

    /** The triple point is where water, ice and vapour are in equilibrium; the formulas are made to meet there. */
    @ParameterizedTest
    @CsvSource({"SONNTAG_1990, 2e-6", "HARDY_1998, 2e-6"})
    void water_and_ice_meet_at_the_triple_point(Formulation formulation, double distance) {
        MoistAir air = MoistAir.by(formulation);
        double water = air.saturation(Air.celsius(0.01), Phase.WATER).pascals();
        double ice = air.saturation(Air.celsius(0.01), Phase.ICE).pascals();
        assertEquals(1, ice / water, distance);
        // Guildner, Johnson and Jones 1976: 611.657 Pa, uncertainty 0.010 Pa
        assertEquals(611.657, water, 0.010);
    }
}
