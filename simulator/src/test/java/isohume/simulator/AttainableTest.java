// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said to be attainable is attained by the model itself, within what the chamber's own sensors may be off. */
class AttainableTest {
    private static final BenchParameters PORTABLE = BenchParameters.portable();
    private static final int SECONDS = 3 * 3600;
    private static final double SENSOR_KELVIN = 0.15;
    private static final double SENSOR_PERCENT = 1.2;

    private static BenchParameters weaker() {
        return PORTABLE.with(new Enclosure(6, 200, 2000, 6, 0.5, 0.8, 0.05, 2, 25, 25))
                .with(new Streams(0.8, 3, 0.01, 5, 30, 240, 0.9, 80, 500, 0.2, 60, -32))
                .with(new Surroundings(26, 0.2, 60, 95_000, 100, 30, 45));
    }

    private static void holds(BenchParameters bench, double celsius, double percent) {
        World world = new World(bench, 5);
        world.controller().want(celsius, percent);
        world.controller().run(true);
        for (int i = 0; i < SECONDS; i++) {
            world.step();
        }
        assertEquals(celsius, world.air().celsius(), SENSOR_KELVIN, celsius + " °C");
        assertEquals(percent, world.air().relativeHumidity(), SENSOR_PERCENT, percent + " % RH at " + celsius + " °C");
    }

    @ParameterizedTest
    @CsvSource({"10", "23", "40"})
    void a_portable_bench_holds_its_driest_and_its_wettest(double celsius) {
        Attainable reach = Attainable.by(PORTABLE);
        holds(PORTABLE, celsius, reach.driest(celsius));
        holds(PORTABLE, celsius, reach.wettest(celsius));
    }

    @Test
    void a_weak_bench_holds_its_coldest_and_its_warmest_and_there_its_driest_and_its_wettest() {
        Attainable reach = Attainable.by(weaker());
        assertTrue(reach.coldest() > 5 && reach.warmest() < 50, reach.coldest() + " to " + reach.warmest());
        for (double celsius : new double[] {reach.coldest(), reach.warmest()}) {
            holds(weaker(), celsius, reach.driest(celsius));
            holds(weaker(), celsius, reach.wettest(celsius));
        }
    }

    /** By hand with the Magnus formula of WMO-No. 8 (2018), annex 4.B: 0.97 × 5613 Pa at 35 °C is saturation at 34.45 °C. */
    @Test
    void a_wet_stream_is_a_little_under_its_saturator() {
        assertEquals(34.45, Attainable.by(PORTABLE).wetStream(), 0.02);
    }

    @Test
    void a_bench_that_can_hold_nothing_says_so() {
        BenchParameters broken = PORTABLE.with(new Enclosure(3, 120, 1200, 5, 20, 20, 0.03, 10, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> Attainable.by(broken).coldest());
    }
}
