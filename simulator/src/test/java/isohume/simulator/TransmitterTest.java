// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Quantity;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class TransmitterTest {
    private static final double TOTAL = 101_325;
    private static final double ROOM = 23;

    private static Climate air(double celsius, double percent) {
        return new Climate(celsius, TOTAL, percent / 100 * Air.saturation(celsius, TOTAL));
    }

    private static Transmitter quiet(TransmitterSpecification what, Climate start) {
        return new Transmitter(what, Quiet.portable(), Chance.of(1, what.id()), start);
    }

    /** C-3310's loop is specified as 1.5 % RH wide. */
    @Test
    void the_error_at_mid_humidity_depends_on_where_it_came_from() {
        Transmitter one = quiet(TransmitterSpecification.withHysteresis(), air(23, 50));
        stay(one, 10);
        stay(one, 50);
        double rising = one.relativeHumidity().trueError().getAsDouble();
        stay(one, 90);
        stay(one, 50);
        double falling = one.relativeHumidity().trueError().getAsDouble();
        assertEquals(1.5, falling - rising, 0.01);
        stay(one, 10);
        stay(one, 50);
        assertEquals(rising, one.relativeHumidity().trueError().getAsDouble(), 0.001, "the loop closes");
    }

    private static void stay(Transmitter one, double percent) {
        for (int i = 0; i < 20_000; i++) {
            one.step(air(23, percent), ROOM);
        }
    }

    @Test
    void the_sensor_is_three_times_as_slow_at_5_degrees_as_at_23() {
        assertEquals(3, secondsToTwoThirds(5) / secondsToTwoThirds(23), 0.15);
    }

    private static double secondsToTwoThirds(double celsius) {
        TransmitterSpecification fine = withoutRounding(TransmitterSpecification.good());
        Transmitter one = quiet(fine, air(celsius, 40));
        double start = one.relativeHumidity().shown().getAsDouble();
        int seconds = 0;
        while (one.relativeHumidity().shown().getAsDouble() < start + 20 * (1 - StrictMath.exp(-1))) {
            one.step(air(celsius, 60), celsius);
            seconds++;
        }
        return seconds;
    }

    @Test
    void a_small_part_of_a_change_comes_late() {
        TransmitterSpecification creeping = withoutRounding(TransmitterSpecification.good());
        Transmitter one = quiet(creeping, air(23, 30));
        for (int i = 0; i < 300; i++) {
            one.step(air(23, 70), ROOM);
        }
        double early = one.relativeHumidity().shown().getAsDouble();
        stay(one, 70);
        double late = one.relativeHumidity().shown().getAsDouble();
        double share = creeping.humidity().creepShare();
        assertEquals(share * 40 * StrictMath.exp(-300.0 / 1500), late - early, 0.01);
    }

    private static TransmitterSpecification withoutRounding(TransmitterSpecification one) {
        return one.with(one.humidity().withResolution(0)).with(one.temperature().withResolution(0));
    }

    @TestFactory
    Stream<DynamicTest> once_all_has_settled_what_is_shown_is_the_true_value_and_the_true_error() {
        BenchParameters parameters = Quiet.portable().withDrawn(1);
        List<TransmitterSpecification> fine = parameters.transmitters().stream()
                .map(TransmitterTest::withoutRounding)
                .toList();
        MirrorSpecification mirror = parameters.mirror();
        World world = Quiet.running(
                parameters
                        .withTransmitters(fine)
                        .with(new MirrorSpecification(
                                mirror.seconds(), 0, 0, 0, mirror.certificate(), mirror.drift(), 0.03, 0.02)),
                30,
                60);
        Quiet.pass(world, 60_000);
        return Stream.of(
                        List.of("chamber", Quantity.TEMPERATURE),
                        List.of("chamber", Quantity.RELATIVE_HUMIDITY),
                        List.of("mirror", Quantity.DEW_POINT),
                        List.of("A-1042", Quantity.RELATIVE_HUMIDITY),
                        List.of("B-2077", Quantity.RELATIVE_HUMIDITY),
                        List.of("C-3310", Quantity.RELATIVE_HUMIDITY),
                        List.of("A-1042", Quantity.TEMPERATURE),
                        List.of("B-2077", Quantity.TEMPERATURE),
                        List.of("C-3310", Quantity.TEMPERATURE))
                .map(one -> DynamicTest.dynamicTest(
                        one.toString(), () -> assertSettled(world.shown((String) one.get(0), (Quantity) one.get(1)))));
    }

    private static void assertSettled(Shown channel) {
        double shown = channel.shown().getAsDouble();
        double expected =
                channel.trueValue().getAsDouble() + channel.trueError().getAsDouble();
        assertEquals(expected, shown, 1e-4);
    }

    @Test
    void a_sensor_that_warms_itself_reads_low() {
        Transmitter one = quiet(TransmitterSpecification.withHysteresis(), air(23, 90));
        TransmitterSpecification specification = TransmitterSpecification.withHysteresis();
        double error = one.relativeHumidity().trueError().getAsDouble();
        double withoutWarmth = specification.humidity().staticError(90, 23);
        // 0.1 K of self-heating is -0.55 % RH at 90 % RH and 23 °C: d ln e/dT = 0.0606 per kelvin
        assertEquals(-0.55, error - withoutWarmth, 0.06);
    }

    @Test
    void the_three_are_a_good_one_one_high_in_the_wet_and_one_with_hysteresis() {
        assertTrue(worst(TransmitterSpecification.good()) < 0.8);
        assertTrue(TransmitterSpecification.highInTheWet().humidity().staticError(90, 23) > 2);
        assertTrue(Math.abs(TransmitterSpecification.highInTheWet().humidity().staticError(30, 23)) < 1);
    }

    private static double worst(TransmitterSpecification one) {
        double worst = 0;
        for (double percent = 10; percent <= 90; percent += 10) {
            worst = Math.max(worst, Math.abs(one.humidity().staticError(percent, 23)));
        }
        return worst + one.humidity().loopWidth() / 2;
    }
}
