// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.result.alignment.Alignment.Found;
import isohume.result.alignment.Alignment.Reason;
import isohume.result.alignment.Alignment.Refused;
import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected offsets are those that the records are made with. */
class ClockAlignmentTest {
    private static final double HOURS = 3600;

    /** Three levels with a first-order approach of 2 min. */
    private static double steps(double t) {
        return 30 + risen(t - 1.5 * HOURS, 30) + risen(t - 4 * HOURS, -45);
    }

    @ParameterizedTest
    @CsvSource({"60, 0", "60, 754.3", "300, -3601.7", "900, 6840"})
    void the_offset_is_found_within_what_is_stated(double interval, double offset) {
        Found found = assertInstanceOf(
                Found.class,
                ClockAlignment.of(
                        reference(ClockAlignmentTest::steps), logger(ClockAlignmentTest::steps, interval, offset, 0)));
        assertEquals(offset, found.offset(), found.expanded());
        assertTrue(found.expanded() <= interval, "U is " + found.expanded());
    }

    @Test
    void a_slow_sensor_is_not_taken_for_a_late_clock() {
        DoubleUnaryOperator slow = t -> 30 + slowly(t - 1.5 * HOURS, 30) + slowly(t - 4 * HOURS, -45);
        Found found = assertInstanceOf(
                Found.class, ClockAlignment.of(reference(ClockAlignmentTest::steps), logger(slow, 60, 600, 0)));
        assertEquals(600, found.offset(), found.expanded()); // its lag is 200 s
    }

    @Test
    void a_flat_record_is_refused() {
        assertRefused(Reason.NO_FEATURE, t -> 50);
    }

    @Test
    void an_even_rise_is_refused_as_a_shift_in_time_is_one_in_value() {
        assertRefused(Reason.NO_FEATURE, t -> 20 + 5 * t / HOURS);
    }

    @Test
    void a_cycle_that_comes_again_and_again_is_refused() {
        assertRefused(Reason.AMBIGUOUS, t -> 50 + 10 * Math.sin(2 * Math.PI * t / 2700));
    }

    @Test
    void a_few_readings_are_refused() {
        TimedValues few = new TimedValues(new double[] {0, 60, 120}, new double[] {1, 2, 3});
        assertEquals(
                Reason.TOO_SHORT,
                assertInstanceOf(Refused.class, ClockAlignment.of(few, few)).reason());
    }

    @Test
    void two_noted_times_give_offset_and_drift() {
        NotedTimes first = new NotedTimes(100, 90, 1);
        NotedTimes second = new NotedTimes(86_500 + 4, 86_490, 1); // 10 s ahead, a day later 14 s
        Found found = assertInstanceOf(Found.class, NotedTimes.between(first, second));
        assertEquals(12, found.offset());
        assertEquals(4, found.drift(), 1e-3);
        assertEquals(90, found.reference(100), 1e-9);
        assertEquals(86_490, found.reference(86_504), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> NotedTimes.between(second, first));
    }

    private static void assertRefused(Reason reason, DoubleUnaryOperator course) {
        Refused refused =
                assertInstanceOf(Refused.class, ClockAlignment.of(reference(course), logger(course, 60, 600, 1)));
        assertEquals(reason, refused.reason(), refused.why());
    }

    private static TimedValues reference(DoubleUnaryOperator course) {
        return record(course, 10, 0.01, 0, 2);
    }

    private static TimedValues logger(DoubleUnaryOperator course, double interval, double offset, long seed) {
        return record(course, interval, 0.1, offset, seed);
    }

    private static TimedValues record(
            DoubleUnaryOperator course, double interval, double resolution, double offset, long seed) {
        Random random = new Random(seed);
        double[] seconds = new double[(int) (6 * HOURS / interval)];
        Arrays.setAll(seconds, i -> i * interval);
        double[] values = Arrays.stream(seconds)
                .map(t -> Math.rint((course.applyAsDouble(t) + resolution * random.nextGaussian()) / resolution)
                        * resolution)
                .toArray();
        return new TimedValues(Arrays.stream(seconds).map(t -> t + offset).toArray(), values);
    }

    private static double risen(double since, double by) {
        return since < 0 ? 0 : by * (1 - Math.exp(-since / 120));
    }

    /** The same through a lag of 200 s: the sum of two exponentials. */
    private static double slowly(double since, double by) {
        return since < 0 ? 0 : by * (1 - (200 * Math.exp(-since / 200) - 120 * Math.exp(-since / 120)) / 80);
    }
}
