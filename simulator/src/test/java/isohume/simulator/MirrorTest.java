// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Phase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MirrorTest {
    private static final double TOTAL = 101_325;

    private static Climate air(double dewPoint, Phase phase) {
        return new Climate(23, TOTAL, Air.vapour(dewPoint, TOTAL, phase));
    }

    private static Mirror startingAt(double dewPoint) {
        return new Mirror(Quiet.portable(), Chance.of(4, "mirror"), air(dewPoint, Phase.WATER));
    }

    @Test
    void crossing_zero_downwards_the_deposit_is_unknown_for_minutes_and_then_ice() {
        Mirror mirror = startingAt(10);
        assertEquals(Mirror.Deposit.WATER, mirror.deposit());
        int unknown = 0;
        for (int i = 0; i < 3600; i++) {
            mirror.step(air(-9.11, Phase.ICE));
            unknown += mirror.deposit() == Mirror.Deposit.UNKNOWN ? 1 : 0;
        }
        int seconds = unknown;
        assertTrue(seconds > 60 && seconds < 900, () -> seconds + " s unknown");
        assertEquals(Mirror.Deposit.ICE, mirror.deposit());
        assertEquals(-9.11, mirror.dewPoint().shown().getAsDouble(), 0.006);
    }

    @Test
    void crossing_zero_upwards_the_ice_melts() {
        Mirror mirror = startingAt(-10);
        assertEquals(Mirror.Deposit.ICE, mirror.deposit());
        for (int i = 0; i < 1800; i++) {
            mirror.step(air(12, Phase.WATER));
        }
        assertEquals(Mirror.Deposit.WATER, mirror.deposit());
        assertEquals(12, mirror.dewPoint().shown().getAsDouble(), 0.006);
    }

    /** Dew and frost point of the same vapour, as worked for the trade from Sonntag 1990. */
    @ParameterizedTest(name = "a frost point of {0} °C is a dew point of {1} °C")
    @CsvSource({"-1, -1.13", "-5, -5.64", "-10, -11.23", "-20, -22.25", "-30, -33.09"})
    void the_same_vapour_has_two_points(double frost, double dew) {
        double vapour = Air.vapour(frost, TOTAL, Phase.ICE);
        assertEquals(dew, Air.point(vapour, TOTAL, Phase.WATER, 0), 0.02);
    }

    /** By hand: 100 Pa of 101 325 Pa is 0.1 % of the vapour pressure, 0.015 K at a dew point of 12 °C. */
    @Test
    void a_lower_pressure_at_the_mirror_lowers_the_dew_point() {
        Climate chamber = air(12, Phase.WATER);
        Climate mirror = chamber.at(TOTAL - 100);
        double point = Air.point(mirror.vapour(), mirror.pascals(), Phase.WATER, 12);
        assertEquals(-0.015, point - 12, 0.0006);
    }

    @Test
    void it_is_slower_at_a_low_dew_point() {
        assertTrue(secondsFor(-25, Phase.ICE) > 2 * secondsFor(15, Phase.WATER));
    }

    private static int secondsFor(double point, Phase phase) {
        Mirror mirror = startingAt(phase == Phase.ICE ? -15 : 25);
        for (int i = 0; i < 4000; i++) {
            mirror.step(air(point + 4, phase));
        }
        int seconds = 0;
        while (Math.abs(mirror.dewPoint().shown().getAsDouble() - point) > 0.4) {
            mirror.step(air(point, phase));
            seconds++;
        }
        return seconds;
    }

    @Test
    void what_is_true_does_not_wait_for_the_mirror() {
        Mirror mirror = startingAt(10);
        mirror.step(air(20, Phase.WATER));
        assertEquals(20, mirror.dewPoint().trueValue().getAsDouble(), 1e-6);
        assertTrue(mirror.dewPoint().shown().getAsDouble() < 12, "one second of twenty");
    }
}
