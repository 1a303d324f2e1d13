// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lengths of time that technicians know: common practice, no source. */
class SettlingTest {
    private static final int LONG = 4 * 3600;

    /** Seconds after which a value stays within a tolerance of where it ends. */
    private static int settled(World world, ToDoubleFunction<World> value, double tolerance) {
        double[] course = new double[LONG];
        for (int i = 0; i < LONG; i++) {
            world.step();
            course[i] = value.applyAsDouble(world);
        }
        int last = 0;
        for (int i = 0; i < LONG; i++) {
            if (Math.abs(course[i] - course[LONG - 1]) > tolerance) {
                last = i;
            }
        }
        return last;
    }

    @ParameterizedTest(name = "from {0} to {1} % RH")
    @CsvSource({"10, 50", "50, 90", "50, 10", "90, 50"})
    void the_humidity_of_the_chamber_stands_after_some_minutes(double from, double to) {
        World world = Quiet.running(Quiet.portable(), 23, from);
        Quiet.pass(world, LONG);
        world.controller().want(23, to);
        int seconds = settled(world, w -> w.air().relativeHumidity(), 0.1);
        assertTrue(seconds > 90 && seconds < 330, () -> seconds + " s to 0.1 % RH");
    }

    @ParameterizedTest(name = "from {0} to {1} °C")
    @CsvSource({"23, 38", "38, 23", "23, 8"})
    void the_temperature_takes_ten_to_twenty_five_minutes_to_a_hundredth(double from, double to) {
        World world = Quiet.running(Quiet.portable(), from, 30);
        Quiet.pass(world, LONG);
        world.controller().want(to, 30);
        int seconds = settled(world, w -> w.air().celsius(), 0.01);
        assertTrue(seconds > 600 && seconds < 1500, () -> seconds + " s to 0.01 K");
        assertEquals(to, world.air().celsius(), 0.002);
    }

    @ParameterizedTest(name = "{0} °C and {1} % RH")
    @CsvSource({"10, 10", "10, 90", "23, 5", "23, 95", "40, 10", "40, 70", "5, 80", "50, 40"})
    void a_point_within_reach_is_reached_and_held(double celsius, double percent) {
        World world = Quiet.running(Quiet.portable(), celsius, percent);
        Quiet.pass(world, LONG);
        assertEquals(celsius, world.air().celsius(), 0.005);
        assertEquals(percent, world.air().relativeHumidity(), 0.05);
        assertEquals(0, world.vapour().liquidGrams(), 1e-9, "g of dew");
    }

    @ParameterizedTest(name = "{0} °C and {1} % RH")
    @CsvSource({"40, 95", "50, 80", "45, 70"})
    void a_point_beyond_reach_is_not_reached(double celsius, double percent) {
        World world = Quiet.running(Quiet.portable(), celsius, percent);
        Quiet.pass(world, LONG);
        assertTrue(Math.abs(world.air().relativeHumidity() - percent) > 0.5);
    }
}
