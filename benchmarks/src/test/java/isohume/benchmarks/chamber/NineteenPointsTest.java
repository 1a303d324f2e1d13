// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.quantity.Pressure;
import isohume.simulator.BenchParameters;
import isohume.simulator.Enclosure;
import java.util.List;
import org.junit.jupiter.api.Test;

class NineteenPointsTest {
    private static final BenchParameters PORTABLE = BenchParameters.portable();

    @Test
    void a_portable_bench_does_three_temperatures_and_comes_down_again_at_the_middle_one() {
        assertEquals("""
                  - {temperature: 10, humidity: [10, 30, 56, 70, 90]}
                  - {temperature: 23, humidity: [10, 30, 50, 70, 90, 70, 50, 30, 10]}
                  - {temperature: 40, humidity: [10, 25, 41, 56, 71]}
                """, NineteenPoints.on(PORTABLE));
    }

    @Test
    void points_in_another_order_are_legs_again() {
        Job job = Job.of("portable", PORTABLE, 1);
        List<Point> points = new java.util.ArrayList<>(job.worksheet().plan().points());
        points.add(0, points.remove(5)); // the first at 23 °C
        assertEquals("""
                  - {temperature: 23, humidity: [10]}
                  - {temperature: 10, humidity: [10, 30, 56, 70, 90]}
                  - {temperature: 23, humidity: [30, 50, 70, 90, 70, 50, 30, 10]}
                  - {temperature: 40, humidity: [10, 25, 41, 56, 71]}
                """, NineteenPoints.legs(points));
        List<Point> again = job.with(points).worksheet().plan().points();
        assertEquals(19, again.size());
        assertEquals(points.get(8).humidity(), again.get(8).humidity());
    }

    @Test
    void no_point_has_a_dew_point_close_to_freezing() {
        MoistAir air = MoistAir.by(Formulation.HARDY_1998);
        for (long seed = 1; seed <= 50; seed++) {
            List<Point> points = Job.of("seed " + seed, RandomBench.drawn(seed), seed)
                    .worksheet()
                    .plan()
                    .points();
            assertEquals(19, points.size(), "seed " + seed);
            for (Point point : points) {
                double dew = air.dewPoint(
                                point.humidity(),
                                point.temperature(),
                                Pressure.STANDARD,
                                Pressure.STANDARD,
                                Phase.WATER)
                        .temperature()
                        .celsius();
                assertTrue(Math.abs(dew) > 1.3, "seed " + seed + ", " + point + ": " + dew + " °C");
            }
        }
    }

    @Test
    void a_bench_that_reaches_too_little_is_refused_with_what_it_reaches() {
        Enclosure weak = new Enclosure(3, 120, 1200, 5, 0.10, 0.15, 0.03, 1, 0, 0);
        var refused = assertThrows(IllegalArgumentException.class, () -> NineteenPoints.on(PORTABLE.with(weak)));
        assertTrue(String.valueOf(refused.getMessage()).contains("holds"), refused.getMessage());
    }
}
