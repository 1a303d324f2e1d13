// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class ClockfaceTest {
    private final Clockface vienna = new Clockface(ZoneId.of("Europe/Vienna"));
    private final Instant at = Instant.parse("2026-07-01T22:30:45Z");

    @Test
    void an_instant_carries_its_zone() {
        assertEquals("2026-07-02 00:30:45+02:00", vienna.full(at));
        assertEquals("00:30:45+02:00", vienna.time(at));
    }

    @Test
    void an_expectation_is_to_the_minute_and_names_the_day_when_it_is_another() {
        assertEquals("00:31+02:00", vienna.expected(at, at));
        assertEquals("2026-07-02 00:31+02:00", vienna.expected(at, at.minusSeconds(3600)));
    }

    @Test
    void a_length_is_no_finer_than_it_needs_to_be() {
        assertEquals("40\u202fs", Clockface.length(Duration.ofSeconds(40)));
        assertEquals("12\u202fmin", Clockface.length(Duration.ofSeconds(12 * 60 + 29)));
        assertEquals("3\u202fh\u00a005\u202fmin", Clockface.length(Duration.ofMinutes(185)));
        assertEquals("1\u202fh\u00a000\u202fmin", Clockface.length(Duration.ofSeconds(59 * 60 + 45)));
        assertEquals("0\u202fs", Clockface.length(Duration.ofSeconds(-5)));
    }
}
