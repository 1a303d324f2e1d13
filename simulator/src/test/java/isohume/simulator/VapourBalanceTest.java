// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Phase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VapourBalanceTest {
    private static final double TOTAL = 101_325;

    @Test
    void every_gram_of_water_is_somewhere() {
        BenchParameters parameters = BenchParameters.portable();
        World world = Quiet.running(parameters, 35, 70);
        double held = world.vapour().heldGrams();
        double load = world.vapour().agent().loadGrams();
        double[][] asked = {{35, 70}, {10, 90}, {10, 5}, {45, 40}, {23, 95}};
        for (double[] point : asked) {
            world.controller().want(point[0], point[1]);
            Quiet.pass(world, 1500);
            world.door(true);
            Quiet.pass(world, 20);
            world.door(false);
        }
        VapourBalance vapour = world.vapour();
        double evaporated = vapour.saturator().usedGrams();
        double dried = vapour.agent().loadGrams() - load;
        double kept = vapour.heldGrams() - held;
        assertTrue(evaporated > 0.5 && dried > 0.5, "water went round");
        assertEquals(0, evaporated - dried + vapour.fromRoomGrams() - kept, 1e-9 * evaporated);
    }

    /**
     * By hand, r = e/(P - e) with e from Sonntag 1990: e(23) = 2810.4 Pa, e(22.5) = 2726.8 Pa, e over ice at -30 °C =
     * 38.0 Pa; w = (r - r_dry)/(r_wet - r_dry). The two enhancement factors nearly cancel.
     */
    @ParameterizedTest(name = "{0} % RH takes a wet share of {1}")
    @CsvSource({"10, 0.088", "50, 0.502", "90, 0.925", "95, 0.978"})
    void the_wet_share_that_holds_a_humidity_is_that_of_molar_mixing(double percent, double share) {
        World world = Quiet.running(Quiet.workedByHand(), 23, percent);
        Quiet.pass(world, 7200);
        assertEquals(percent, world.air().relativeHumidity(), 0.01);
        assertEquals(share, world.controller().action().wetShare(), 0.001);
    }

    /** By hand: 10 L at 5 L/min is 120 s; 3 L at 4 L/min is 45 s. Vapour displaces up to 1 % of the dry gas. */
    @ParameterizedTest(name = "{0} L at {1} L/min")
    @CsvSource({"10, 5, 120", "3, 4, 45", "1, 1, 60"})
    void without_walls_a_change_dies_away_with_volume_over_flow(double litres, double flow, double seconds) {
        BenchParameters parameters = Quiet.workedByHand();
        VapourBalance vapour = balance(parameters.with(parameters.enclosure().withVolumeLitres(litres)), 20);
        double end = endOf(parameters, litres, flow);
        double before = vapour.ratio() - end;
        for (int i = 0; i < seconds; i++) {
            vapour.step(still(23), flow, 0);
        }
        assertEquals(StrictMath.exp(-1), (vapour.ratio() - end) / before, 0.01 * StrictMath.exp(-1));
    }

    private static double endOf(BenchParameters parameters, double litres, double flow) {
        VapourBalance settled = balance(parameters.with(parameters.enclosure().withVolumeLitres(litres)), 20);
        for (int i = 0; i < 10_000; i++) {
            settled.step(still(23), flow, 0);
        }
        return settled.ratio();
    }

    private static VapourBalance balance(BenchParameters parameters, double percent) {
        Climate start = new Climate(23, TOTAL, percent / 100 * Air.saturation(23, TOTAL));
        double litres = parameters.enclosure().volumeLitres();
        WallFilm walls = new WallFilm(parameters.sorption(), litres, TOTAL, percent);
        return new VapourBalance(parameters.enclosure(), parameters.streams(), walls, start);
    }

    private static VapourBalance.Surround still(double celsius) {
        return new VapourBalance.Surround(celsius, celsius, TOTAL, 0.0126, false);
    }

    @Test
    void walls_give_back_water_long_after_the_first_change_and_more_slowly_in_the_dry() {
        BenchParameters parameters = Quiet.workedByHand();
        Sorption lively = Sorption.portable();
        VapourBalance clean = balance(parameters, 90);
        VapourBalance dirty = balance(parameters.with(lively), 90);
        VapourBalance even = balance(
                parameters.with(new Sorption(
                        lively.fastShare(), lively.fastSeconds(), lively.slowShare(), lively.slowSeconds(), 0)),
                90);
        for (int i = 0; i < 3600; i++) {
            clean.step(still(23), 1, 0.05);
            dirty.step(still(23), 1, 0.05);
            even.step(still(23), 1, 0.05);
        }
        double tail = dirty.ratio() - clean.ratio();
        double evenTail = even.ratio() - clean.ratio();
        assertTrue(evenTail > 0, () -> "tail " + evenTail);
        assertTrue(tail > evenTail, () -> "slowed tail " + tail + ", even tail " + evenTail);
    }

    @Test
    void air_holds_no_more_than_saturation_and_the_rest_is_dew() {
        BenchParameters parameters = Quiet.portable();
        VapourBalance vapour = balance(parameters.with(parameters.streams().withSaturator(35, 35, 1)), 50);
        for (int i = 0; i < 1800; i++) {
            vapour.step(still(23), 4, 1);
            assertTrue(vapour.vapourPascals(TOTAL) <= Air.saturation(23, TOTAL) * (1 + 1e-9));
        }
        double dew = vapour.liquidGrams();
        assertTrue(dew > 0.1, () -> dew + " g of dew");
        for (int i = 0; i < 6 * 3600; i++) {
            vapour.step(still(23), 4, 0);
        }
        assertEquals(0, vapour.liquidGrams(), 1e-3, "dew dries off");
    }

    @ParameterizedTest(name = "{0} g taken up of 100 g")
    @CsvSource({"0, -38", "60, -21.8", "80, -9.2"})
    void the_driest_air_is_as_dry_as_the_drying_agent_still_makes_it(double load, double frostPoint) {
        BenchParameters parameters = Quiet.workedByHand();
        VapourBalance vapour = balance(parameters.with(parameters.streams().withDryingAgent(500, load, -38)), 30);
        for (int i = 0; i < 7200; i++) {
            vapour.step(still(23), 4, 0);
        }
        double reached = Air.point(vapour.vapourPascals(TOTAL), TOTAL, Phase.ICE, -20);
        assertEquals(frostPoint, reached, 0.1);
    }

    /**
     * By hand, m = 60 Q n' M r at 23 °C and 1013.25 hPa with e from Sonntag 1990, to two decimals; the hand calculation
     * leaves out the enhancement factor, which adds 0.45 % at the most.
     */
    @ParameterizedTest(name = "1 L/min to a dew point of {0} °C takes {1} g/h")
    @CsvSource({"0, 0.27", "5, 0.39", "12, 0.63", "21.3, 1.14", "30, 1.95"})
    void a_litre_per_minute_carries_the_water_that_it_should(double dewPoint, double gramsPerHour) {
        double ratio = Air.ratio(Air.saturation(dewPoint, TOTAL), TOTAL);
        assertEquals(gramsPerHour, 3600 * Air.flow(1) * ratio * Air.WATER_GRAMS, 0.005 + 0.0045 * gramsPerHour);
    }

    /** By hand: 0.0411 mol/L, 60 L/h, w = 0.5017, r_wet - r = 0.02766 - 0.01406, 18.015 g/mol: 0.303 g/h. */
    @Test
    void holding_50_percent_at_one_litre_per_minute_uses_a_third_of_a_gram_an_hour() {
        World world = Quiet.running(Quiet.workedByHand(), 23, 50);
        Quiet.pass(world, 3600);
        double before = world.vapour().saturator().usedGrams();
        Quiet.pass(world, 3600);
        assertEquals(0.303, world.vapour().saturator().usedGrams() - before, 0.004);
    }

    @Test
    void with_an_empty_tank_the_chamber_dries_out_and_says_so() {
        BenchParameters parameters = Quiet.portable();
        World world =
                Quiet.running(parameters.with(parameters.streams().withTank(1).withLeak(0)), 23, 80);
        Quiet.pass(world, 8 * 3600);
        assertTrue(world.vapour().saturator().low());
        assertEquals(0, world.vapour().saturator().levelPercent(), 0.5);
        assertTrue(world.air().relativeHumidity() < 80);
    }
}
