// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Setpoint;
import isohume.quantity.Phase;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TailSettlingTest {
    private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    private static final String HUMIDITY = "P-1/relative_humidity";
    private static final Setpoint TARGET = new Setpoint(Temperature.ofCelsius(23), RelativeHumidity.ofPercent(50));

    private final SplittableRandom random = new SplittableRandom(5);
    private final TailSettling settling = of(List.of(HUMIDITY), Duration.ofSeconds(10));
    private double clock;

    private static TailSettling of(List<String> instruments, Duration interval) {
        Roles roles =
                new Roles("m/dew_point", "m/deposit", "t/temperature", "t/pressure", "t/mirror_pressure", instruments);
        Rules usual = Rules.usual();
        Rules rules = new Rules(
                interval,
                usual.settling(),
                usual.leastReadings(),
                usual.mostReadings(),
                usual.noiseShare(),
                usual.longest(),
                usual.patience());
        return new TailSettling(SettlingRule.Tail.usual(), rules, roles, Targets.none());
    }

    private Moment moment(double reference, Map<String, Double> instruments, double digit) {
        Map<String, Double> shown = new LinkedHashMap<>(instruments);
        Map<String, Double> steps = new LinkedHashMap<>();
        instruments.keySet().forEach(channel -> steps.put(channel, digit));
        shown.put("t/temperature", 23 + 0.001 * random.nextGaussian());
        shown.put("m/dew_point", 12 + 0.005 * random.nextGaussian());
        return new Moment(
                START.plusMillis(Math.round(clock * 1000)),
                shown,
                steps,
                Map.of(),
                Map.of(),
                Optional.of(Phase.WATER),
                OptionalDouble.of(reference));
    }

    /** A step of 40 % RH at time 0 that chamber and probe follow, and a display that may be frozen. */
    private void pass(int seconds, boolean frozen) {
        for (int i = 0; i < seconds / 10; i++) {
            clock += 10;
            double reference = 50 - 40 * Math.exp(-clock / 40) + 0.02 * random.nextGaussian();
            double probe = 50.5 - 40 * Math.exp(-clock / 60) + 0.02 * random.nextGaussian();
            double shown = frozen ? 10.5 : Math.rint(probe * 100) / 100;
            settling.take(moment(reference, Map.of(HUMIDITY, shown), 0.01));
        }
    }

    private Waiting difference() {
        return settling.waiting(TARGET).getLast();
    }

    private void stayAt(double percent, int seconds) {
        for (int i = 0; i < seconds / 10; i++) {
            clock += 10;
            double shown = Math.rint((percent + 0.5 + 0.02 * random.nextGaussian()) * 100) / 100;
            settling.take(moment(percent, Map.of(HUMIDITY, shown), 0.01));
        }
    }

    @Test
    void a_probe_that_follows_settles_and_says_before_when() {
        settling.restart(1, START);
        pass(300, false);
        assertFalse(Settling.settled(settling.waiting(TARGET)));
        assertTrue(difference().left().isPresent());
        pass(3600, false);
        assertTrue(Settling.settled(settling.waiting(TARGET)), Settling.inWords(difference()));
        assertEquals(Duration.ZERO, difference().left().orElseThrow());
    }

    @Test
    void a_display_that_keeps_its_figures_while_the_reference_goes_elsewhere_never_settles() {
        settling.restart(1, START);
        stayAt(10, 600);
        clock = 0;
        settling.restart(2, START.plusSeconds(600));
        clock = 600;
        for (int i = 0; i < 1440; i++) {
            clock += 10;
            double reference = 50 - 40 * Math.exp(-(clock - 600) / 40) + 0.02 * random.nextGaussian();
            settling.take(moment(reference, Map.of(HUMIDITY, 10.5), 0.01));
            assertFalse(Settling.settled(settling.waiting(TARGET)));
        }
        assertTrue(Settling.inWords(difference()).contains("frozen"), Settling.inWords(difference()));
    }

    @Test
    void a_change_of_humidity_alone_leaves_a_temperature_its_tail() {
        TailSettling warm = of(List.of("P-1/temperature"), Duration.ofSeconds(10));
        warm.asked(1, TARGET, START);
        for (int i = 0; i < 120; i++) {
            clock += 10;
            double shown = Math.rint((23.1 + 0.01 * random.nextGaussian()) * 100) / 100;
            warm.take(moment(50, Map.of("P-1/temperature", shown), 0.01));
        }
        Setpoint wetter = new Setpoint(TARGET.temperature(), RelativeHumidity.ofPercent(70));
        warm.asked(2, wetter, START.plusSeconds(1200));
        assertTrue(warm.waiting(wetter).getLast().settled());
        Setpoint warmer = new Setpoint(Temperature.ofCelsius(40), RelativeHumidity.ofPercent(70));
        warm.asked(3, warmer, START.plusSeconds(1210));
        assertFalse(warm.waiting(warmer).getLast().settled());
    }

    @Test
    void what_is_recorded_says_of_every_channel_what_was_still_to_come() {
        settling.restart(1, START);
        pass(1200, false);
        RunFact.ToCome toCome = settling.toCome(Duration.ofSeconds(90)).getFirst();
        assertEquals(HUMIDITY, toCome.channel());
        assertTrue(Math.abs(toCome.value()) < 3 * toCome.standardUncertainty(), toCome.toString());
    }

    @Test
    void a_target_of_the_plan_goes_before_the_predicted_one() {
        Roles roles = new Roles("m/dew_point", "m/deposit", "t/temperature", "t/pressure", "t/p", List.of(HUMIDITY));
        SettlingRule.Tail stated =
                new SettlingRule.Tail(0.2, Duration.ZERO, 0.5, 2, OptionalDouble.of(0.3), OptionalDouble.empty());
        Targets predicted = new Targets(Map.of(HUMIDITY, List.of(0.7)));
        Watched probe = Watched.all(roles).getLast();
        assertEquals(0.3, new TailSettling(stated, Rules.usual(), roles, predicted).target(probe));
        TailSettling usual = new TailSettling(SettlingRule.Tail.usual(), Rules.usual(), roles, predicted);
        usual.restart(1, START);
        assertEquals(0.7, usual.target(probe));
        assertEquals(Quantity.RELATIVE_HUMIDITY, probe.quantity());
    }

    @Test
    void a_poll_each_second_of_24_channels_is_judged_in_a_few_milliseconds() {
        List<String> channels = IntStream.range(0, 24)
                .mapToObj(i -> "P-" + i + (i % 2 == 0 ? "/relative_humidity" : "/temperature"))
                .toList();
        TailSettling many = of(channels, Duration.ofSeconds(1));
        many.restart(1, START);
        long spent = 0;
        int polls = 2000;
        for (int i = 0; i < polls; i++) {
            clock += 1;
            Map<String, Double> shown = new LinkedHashMap<>();
            for (String channel : channels) {
                double at = channel.endsWith("y") ? 50.5 : 23.1;
                shown.put(channel, Math.rint((at + 0.02 * random.nextGaussian()) * 100) / 100);
            }
            Moment moment = moment(50 + 0.02 * random.nextGaussian(), shown, 0.01);
            long begun = CPU.getCurrentThreadCpuTime();
            many.take(moment);
            assertEquals(27, many.waiting(TARGET).size());
            spent += CPU.getCurrentThreadCpuTime() - begun;
        }
        double milliseconds = spent / 1e6 / polls;
        assertTrue(milliseconds < 5, milliseconds + " ms of processor for each poll");
    }
}
