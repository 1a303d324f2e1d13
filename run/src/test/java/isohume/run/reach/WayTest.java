// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Setpoint;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.reach.WayPoint.Aim;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class WayTest {
    private static final MoistAir AIR = MoistAir.by(Formulation.SONNTAG_1990);
    private static final long SEED = 20;

    private final Reach reach = InventedReach.usual();
    private final Way way = new Way(reach, AIR);

    @Test
    void humid_air_is_dried_before_it_is_cooled() {
        List<WayPoint> points = way.between(at(40, 75), at(10, 60));
        assertEquals(
                List.of(Aim.DRYING, Aim.COOLING),
                points.stream().map(WayPoint::aim).toList());
        assertEquals(40, celsius(points.getFirst().target()), 1e-9);
        assertEquals(10, celsius(points.getLast().target()), 1e-9);
    }

    @Test
    void a_cold_chamber_is_warmed_before_its_air_is_humidified() {
        List<WayPoint> points = way.between(at(10, 50), at(40, 75));
        assertEquals(List.of(Aim.WARMING), points.stream().map(WayPoint::aim).toList());
        assertEquals(40, celsius(points.getFirst().target()), 1e-9);
    }

    @Test
    void at_one_temperature_and_where_both_ends_are_dry_the_way_is_straight() {
        assertEquals(List.of(), way.between(at(23, 20), at(23, 95)));
        assertEquals(List.of(), way.between(at(23, 95), at(23, 20)));
        assertEquals(List.of(), way.between(at(40, 20), at(23, 20)));
        assertEquals(List.of(), way.between(at(10, 20), at(23, 20)));
    }

    @Test
    void a_chamber_that_cannot_dry_far_cools_in_stages() {
        Reach damp = new Reach(
                reach.coldest(),
                reach.warmest(),
                RelativeHumidity.ofPercent(50),
                reach.highest(),
                reach.streams(),
                reach.surfaces(),
                List.of());
        List<WayPoint> points = new Way(damp, AIR).between(at(40, 75), at(10, 60));
        assertTrue(points.size() > 3, points.toString());
        assertTrue(points.stream().allMatch(p -> p.target().humidity().percent() >= 50), points.toString());
    }

    /**
     * Whatever the chamber's control does between two conditions: temperature and humidity may run ahead of one another,
     * vapour may stay as it was while the air cools. Dew points and surfaces are reckoned here anew.
     */
    @Test
    void nothing_condenses_at_any_instant_of_any_way() {
        System.out.println("seed " + SEED);
        SplittableRandom random = new SplittableRandom(SEED);
        int withWayPoints = 0;
        for (int i = 0; i < 4000; i++) {
            Setpoint from = some(random);
            Setpoint to = some(random);
            List<Setpoint> legs = new ArrayList<>(List.of(from));
            way.between(from, to).forEach(p -> legs.add(p.target()));
            legs.add(to);
            withWayPoints += legs.size() > 2 ? 1 : 0;
            for (int k = 1; k < legs.size(); k++) {
                follow(legs.get(k - 1), legs.get(k));
            }
        }
        assertTrue(withWayPoints > 1000, withWayPoints + " ways of 4000 had way-points");
    }

    private void follow(Setpoint from, Setpoint to) {
        double vapour = vapour(from);
        for (double warmed = 0; warmed <= 1; warmed += 0.1) {
            double t = celsius(from) + warmed * (celsius(to) - celsius(from));
            double surface = surface(t, celsius(to), celsius(from));
            for (double wetted = 0; wetted <= 1; wetted += 0.25) {
                double wanted = vapour(at(t, to.humidity().percent()));
                double now = vapour + wetted * (wanted - vapour);
                double settles = dewPoint(now);
                assertTrue(
                        settles < surface,
                        () -> from + " to " + to + " at " + t + " °C: dew point " + settles + ", surface " + surface);
            }
        }
    }

    /** Half a kelvin, or 3 % of the way to a room of 23 °C, under the air; walls that cool it up to 3 K more. */
    private static double surface(double t, double to, double from) {
        double still = Math.abs(to - t);
        double below = Math.max(0.5, 0.03 * Math.abs(t - 23));
        return to < from ? t - below - Math.min(3, 3 * Math.max(0, still - 0.3)) : t - below;
    }

    @Test
    void a_way_point_is_left_when_the_next_is_safe_and_not_before() {
        Setpoint cooled = way.between(at(40, 75), at(10, 60)).getLast().target();
        Setpoint dried = way.between(at(40, 75), at(10, 60)).getFirst().target();
        assertFalse(way.passed(at(40, 75), cooled));
        assertTrue(way.passed(dried, cooled));
        assertFalse(way.passed(at(20, cooled.humidity().percent()), at(10, 60)), "still cooling");
        assertTrue(way.passed(at(10.2, cooled.humidity().percent()), at(10, 60)));
    }

    @Test
    void a_wet_target_can_be_asked_for_once_the_air_is_there_within_a_controllers_error() {
        Setpoint warmed = way.between(at(10, 50), at(23, 95)).getLast().target();
        assertFalse(way.passed(at(15, warmed.humidity().percent()), at(23, 95)));
        assertTrue(way.passed(at(22.8, warmed.humidity().percent()), at(23, 95)));
        assertTrue(way.passed(at(23.2, warmed.humidity().percent()), at(23, 95)));
    }

    private Setpoint some(SplittableRandom random) {
        while (true) {
            Setpoint wanted = at(5 + 55 * random.nextDouble(), 5 + 91 * random.nextDouble());
            Assessment assessment = new Attainment(reach, AIR).assess(wanted);
            if (assessment.reachable() && assessment.demand().orElseThrow().surface() > 0) {
                return wanted;
            }
        }
    }

    private static double vapour(Setpoint condition) {
        return condition.humidity().fraction()
                * AIR.vapourPressure(DewPoint.overWater(condition.temperature()), Pressure.STANDARD)
                        .pascals();
    }

    private static double dewPoint(double pascals) {
        Phase phase = pascals > 614 ? Phase.WATER : Phase.ICE;
        return AIR.dewPoint(Pressure.ofPascals(pascals), Pressure.STANDARD, phase)
                .celsius();
    }

    private static Setpoint at(double celsius, double percent) {
        return new Setpoint(Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent));
    }

    private static double celsius(Setpoint condition) {
        return condition.temperature().celsius();
    }
}
