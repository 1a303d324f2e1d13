// SPDX-License-Identifier: Apache-2.0
package isohume.device.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.driver.DeviceDescription;
import isohume.device.protocol.Protocol;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrialTest {
    private static final long SECOND = 1_000_000_000;
    private static final DeviceDescription DEVICE = Protocol.parse("""
            protocol: text
            device: p
            title: P
            line: {tcp: {host: 127.0.0.1, port: 1}, timeout-ms: 500}
            exchanges: [{ask: R, reply: '(?<t>.*)'}]
            channels: [{name: t, quantity: temperature, group: t, unit: °C, resolution: 0.01}]
            """, "p.yaml");
    private final Trial trial = new Trial(DEVICE);
    private final Channel channel = DEVICE.channels().getFirst();

    private void show(String value, int second, int millis) {
        Reading reading = new Reading.Value(channel, Instant.EPOCH, new BigDecimal(value), value);
        trial.add(List.of(reading), second * SECOND, Duration.ofMillis(millis));
    }

    @Test
    void a_good_device_has_a_rate_a_latency_and_a_step() {
        for (int i = 0; i < 10; i++) {
            show("20.0" + i / 2, i, 10 + i);
        }
        assertTrue(trial.good());
        assertEquals(2.0, trial.channels().getFirst().secondsBetweenChanges().orElseThrow(), 1e-9);
        assertEquals(new BigDecimal("0.01"), trial.channels().getFirst().step().orElseThrow());
        assertEquals(15, trial.medianMillis(), 1e-9);
        assertEquals(19, trial.longestMillis(), 1e-9);
        assertEquals(List.of(), trial.findings());
    }

    @Test
    void steps_coarser_than_described_are_told() {
        for (int i = 0; i < 10; i++) {
            show("20." + i, i, 10);
        }
        assertTrue(trial.findings().getFirst().contains("steps of 0.1 K"), trial.findings()::toString);
    }

    @Test
    void large_changes_of_a_fine_display_are_no_coarse_steps() {
        String[] shown = {"20.00", "20.31", "20.77", "21.02", "21.50", "21.91", "22.48", "22.80", "23.33", "23.70"};
        for (int i = 0; i < shown.length; i++) {
            show(shown[i], i, 10);
        }
        assertEquals(List.of(), trial.findings());
    }

    @Test
    void a_read_that_nobody_timed_has_no_latency() {
        trial.add(List.of(new Reading.Value(channel, Instant.EPOCH, BigDecimal.TEN, "10")), 0);
        assertEquals(1, trial.reads());
        assertFalse(trial.timed());
        assertEquals(List.of(), trial.findings());
    }

    @Test
    void a_value_that_never_changes_is_told() {
        for (int i = 0; i < 20; i++) {
            show("20.00", i, 10);
        }
        assertTrue(trial.findings().getFirst().contains("the same value 20 times"), trial.findings()::toString);
    }

    @Test
    void a_device_near_its_time_limit_is_told() {
        show("20.00", 0, 450);
        assertTrue(trial.findings().getFirst().contains("timeout-ms"), trial.findings()::toString);
    }

    @Test
    void trouble_is_told_in_plain_words_with_what_to_look_at() {
        Reading none = new Reading.Absent(channel, Instant.EPOCH, Trouble.UNPLUGGED, "no connection to x: nobody");
        trial.add(List.of(none), 0, Duration.ofMillis(3));
        assertFalse(trial.good());
        assertEquals(
                "1 of 1 reads gave nothing: no connection to x: nobody. There is no connection: look at the cable, the power,"
                        + " the address or name of the port, and whether another program holds it.",
                trial.findings().getFirst());
    }
}
