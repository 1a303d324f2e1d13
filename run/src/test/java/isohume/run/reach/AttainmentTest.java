// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Setpoint;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Reach against figures that were computed from Sonntag (Z. Meteorol. 70 (1990) 340) and the enhancement factor of
 * Greenspan (J. Res. NBS 80A (1976) 41) at 1013.25 hPa by an independent script, which bisects instead of solving.
 */
class AttainmentTest {
    private static final MoistAir AIR = MoistAir.by(Formulation.SONNTAG_1990);

    @ParameterizedTest(name = "{1} % RH at {0} °C takes {2} °C")
    @CsvSource({
        "10, 95, 9.237", "23, 95, 22.156", "40, 95, 39.042", "60, 95, 58.897", // dew points
        "10, 50, 0.064", "23, 50, 12.032", "40, 50, 27.594", "60, 50, 45.769",
        "10, 10, -18.182", "23, 10, -9.113", "40, 10, 2.644", "60, 10, 17.482", // frost points below 0 °C
        "5, 5, -28.672"
    })
    void the_dew_or_frost_point_that_a_humidity_takes(double celsius, double percent, double point) {
        assertEquals(point, demand(dry(-40), celsius, percent).point().celsius(), 0.0006);
    }

    @ParameterizedTest(name = "dry air of {0} °C frost point: {2} % RH at {1} °C")
    @CsvSource({
        "-20, 0, 16.897", "-20, 10, 8.409", "-20, 23, 3.673", "-20, 40, 1.397", "-20, 60, 0.517",
        "-30, 0, 6.221", "-30, 10, 3.096", "-30, 23, 1.352", "-30, 40, 0.514", "-30, 60, 0.190",
        "-40, 0, 2.103", "-40, 10, 1.046", "-40, 23, 0.457", "-40, 40, 0.174", "-40, 60, 0.064"
    })
    void the_lowest_humidity_of_a_dry_stream(double frost, double celsius, double percent) {
        Bounds bounds = new Attainment(dry(frost), AIR).bounds(celsius);
        assertEquals(percent, bounds.least().percent(), 0.0006);
        assertEquals(Limit.DRY_STREAM, bounds.least().limit());
    }

    @ParameterizedTest(name = "wet air of {0} °C dew point: {2} % RH at {1} °C")
    @CsvSource({
        "20, 0, 100", "20, 10, 100", "20, 23, 83.21", "20, 40, 31.65", "20, 60, 11.71",
        "30, 0, 100", "30, 10, 100", "30, 23, 100", "30, 40, 57.48", "30, 60, 21.26"
    })
    void the_highest_humidity_of_a_wet_stream(double dew, double celsius, double percent) {
        assertEquals(
                percent, new Attainment(wet(dew), AIR).bounds(celsius).most().percent(), 0.006);
    }

    @ParameterizedTest(name = "{1} % RH at {0} °C: the air is {2} K above the dew point")
    @CsvSource({
        "10, 95, 0.763", "23, 95, 0.844", "40, 95, 0.958", "60, 95, 1.103",
        "10, 90, 1.562", "23, 90, 1.728", "40, 90, 1.960", "60, 90, 2.257"
    })
    void the_margin_of_the_air(double celsius, double percent, double kelvin) {
        assertEquals(kelvin, demand(dry(-40), celsius, percent).air(), 0.0006);
    }

    @ParameterizedTest(name = "wet {0} °C, dry −30 °C: w = {3} for {2} % RH at {1} °C")
    @CsvSource({
        "22.5, 23, 10, 0.0882",
        "22.5, 23, 50, 0.5018",
        "22.5, 23, 90, 0.9248",
        "22.5, 23, 95, 0.9784",
        "45, 23, 10, 0.0231"
    })
    void the_share_of_the_wet_stream(double dew, double celsius, double percent, double share) {
        assertEquals(
                share,
                demand(InventedReach.ofStreams(-30, dew), celsius, percent).wetShare(),
                0.00006);
    }

    @Test
    void a_share_above_one_cannot_be_mixed_and_the_saturator_is_named() {
        Reach reach = InventedReach.ofStreams(-30, 22.5);
        assertEquals(1.3735, demand(reach, 40, 50).wetShare(), 0.00006);
        Outcome.NotReachable no = assertInstanceOf(Outcome.NotReachable.class, outcome(reach, 40, 50));
        assertEquals(Limit.WET_STREAM, no.limit());
        assertEquals(
                36.9, no.nearest().orElseThrow().humidity().percent(), 0.05); // 2727 Pa of 7397 Pa, Sonntag by hand
    }

    @Test
    void a_split_that_is_too_fine_is_marginal_on_either_side() {
        assertTrue(why(InventedReach.ofStreams(-30, 45), 23, 10).contains("the wet stream is only 2."));
        assertTrue(why(InventedReach.ofStreams(-30, 22.5), 23, 95).contains("the dry stream is only"));
        assertInstanceOf(Outcome.Reachable.class, outcome(InventedReach.ofStreams(-30, 30), 23, 50));
    }

    @Test
    void a_present_dry_floor_takes_a_dry_point_away() {
        Reach fresh = InventedReach.ofStreams(-30, 30);
        assertTrue(new Attainment(fresh, AIR).assess(at(10, 10)).reachable());
        DewPoint old = DewPoint.overIce(Temperature.ofCelsius(-15));
        Reach now = fresh.with(fresh.streams().observed(Optional.of(old), Optional.empty()));
        Outcome.NotReachable no = assertInstanceOf(Outcome.NotReachable.class, outcome(now, 10, 10));
        assertEquals(Limit.DRY_STREAM, no.limit());
        assertTrue(no.why().contains("frost point of -15.0 °C"), no.why());
    }

    @Test
    void a_stated_surface_refuses_what_would_be_wet_and_an_assumed_one_warns() {
        Surfaces stated = new Surfaces(1.5, 0, 3, 23, 5, OptionalDouble.empty(), true);
        Outcome.NotReachable no = assertInstanceOf(Outcome.NotReachable.class, outcome(surfaces(stated), 23, 95));
        assertEquals(Limit.SURFACE, no.limit()); // the air's margin is 0.84 K, as above
        Surfaces assumed = new Surfaces(1.5, 0, 3, 23, 5, OptionalDouble.empty(), false);
        assertTrue(why(surfaces(assumed), 23, 95).contains("the coldest surface may be 0.7 K under the dew point"));
    }

    @Test
    void a_line_with_a_temperature_of_its_own_can_bind() {
        Surfaces cold = new Surfaces(0.5, 0, 3, 23, 0, OptionalDouble.of(25), true);
        Outcome.NotReachable no = assertInstanceOf(Outcome.NotReachable.class, outcome(surfaces(cold), 40, 50));
        assertEquals(Limit.LINE, no.limit()); // needs a dew point of 27.6 °C, as above
        assertTrue(no.why().contains("25.0 °C"), no.why());
    }

    @Test
    void an_instrument_or_a_certificate_that_does_not_go_there_binds_and_is_named() {
        Reach reach = InventedReach.ofStreams(-40, 50)
                .and(List.of(
                        new Range("the certificate of REF-01", Quantity.DEW_POINT, -10, 30),
                        new Range("A-1", Quantity.RELATIVE_HUMIDITY, 10, 90),
                        new Range("A-1", Quantity.TEMPERATURE, 0, 50)));
        assertEquals(Limit.MEASURED, no(reach, 23, 5).limit());
        assertTrue(no(reach, 23, 5).why().contains("A-1 goes from 10 to 90 % RH"));
        assertTrue(no(reach, 10, 12).why().contains("REF-01"), no(reach, 10, 12).why()); // needs about -16 °C
        assertTrue(no(reach, 55, 20).why().contains("A-1 goes from 0.0 to 50.0 °C"));
        assertEquals(50, no(reach, 55, 20).nearest().orElseThrow().temperature().celsius(), 1e-9);
    }

    @Test
    void beyond_the_chamber_the_nearest_condition_is_at_its_end() {
        Setpoint nearest =
                no(InventedReach.ofStreams(-40, 50), 75, 99).nearest().orElseThrow();
        assertEquals(60, nearest.temperature().celsius(), 1e-9);
        assertTrue(nearest.humidity().percent() < 99);
    }

    @Test
    void where_nothing_can_be_had_at_a_temperature_the_nearest_one_is_found() {
        Reach hot = new Reach(
                Temperature.ofCelsius(20),
                Temperature.ofCelsius(60),
                RelativeHumidity.ofPercent(40),
                RelativeHumidity.ofPercent(95),
                InventedReach.ofStreams(-30, 30).streams(),
                Surfaces.usual(),
                List.of());
        Setpoint nearest = no(hot, 60, 50).nearest().orElseThrow();
        assertTrue(nearest.temperature().celsius() < 50 && nearest.temperature().celsius() > 40);
        assertInstanceOf(
                Outcome.Marginal.class, new Attainment(hot, AIR).assess(nearest).outcome());
    }

    @Test
    void a_saturator_that_follows_the_chamber_gives_a_coarser_split() {
        Reach fixed = InventedReach.ofStreams(-30, 45);
        Streams following = new Streams(
                fixed.streams().driest(),
                fixed.streams().wettest(),
                Optional.of(new Streams.Follows(Temperature.ofCelsius(5), Temperature.ofCelsius(45))));
        assertTrue(demand(fixed.with(following), 23, 10).wetShare() > 0.08);
        assertEquals(0.02, demand(fixed, 23, 10).wetShare(), 0.005);
    }

    @ParameterizedTest(name = "at {0} °C with dry air of {1} °C and wet air of {2} °C")
    @CsvSource({"23, -30, 22.5", "23, -30, 45", "10, -20, 30", "40, -40, 58", "60, -30, 58", "5, -30, 20"})
    void what_is_easy_ends_where_points_become_marginal(double celsius, double frost, double dew) {
        Attainment attainment = new Attainment(InventedReach.ofStreams(frost, dew), AIR);
        Bounds all = attainment.bounds(celsius);
        Bounds easy = attainment.easy(celsius);
        assertTrue(easy.least().percent() > all.least().percent());
        assertTrue(easy.most().percent() < all.most().percent());
        for (double within :
                new double[] {easy.least().percent() + 1e-6, easy.most().percent() - 1e-6}) {
            assertInstanceOf(
                    Outcome.Reachable.class,
                    attainment.assess(at(celsius, within)).outcome());
        }
        for (double beyond :
                new double[] {easy.least().percent() - 1e-6, easy.most().percent() + 1e-6}) {
            assertInstanceOf(
                    Outcome.Marginal.class,
                    attainment.assess(at(celsius, beyond)).outcome());
        }
    }

    private static Reach dry(double frost) {
        return InventedReach.ofStreams(frost, 62);
    }

    private static Reach wet(double dew) {
        return InventedReach.ofStreams(-40, dew);
    }

    private static Reach surfaces(Surfaces surfaces) {
        Reach plain = InventedReach.ofStreams(-40, 50);
        return new Reach(
                plain.coldest(),
                plain.warmest(),
                plain.lowest(),
                plain.highest(),
                plain.streams(),
                surfaces,
                plain.ranges());
    }

    private static Setpoint at(double celsius, double percent) {
        return new Setpoint(Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent));
    }

    private static Demand demand(Reach reach, double celsius, double percent) {
        return new Attainment(reach, AIR).demand(at(celsius, percent)).orElseThrow();
    }

    private static Outcome outcome(Reach reach, double celsius, double percent) {
        return new Attainment(reach, AIR).assess(at(celsius, percent)).outcome();
    }

    private static Outcome.NotReachable no(Reach reach, double celsius, double percent) {
        return assertInstanceOf(Outcome.NotReachable.class, outcome(reach, celsius, percent));
    }

    private static String why(Reach reach, double celsius, double percent) {
        return String.join(
                "; ",
                assertInstanceOf(Outcome.Marginal.class, outcome(reach, celsius, percent))
                        .why());
    }
}
