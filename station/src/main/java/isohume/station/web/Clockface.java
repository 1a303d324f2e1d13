// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/** Instants and durations as a person reads them: ISO 8601 with the zone, to the second. */
public record Clockface(ZoneId zone) {
    private static final DateTimeFormatter FULL = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ssXXX");
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ssXXX");
    private static final DateTimeFormatter SOON = DateTimeFormatter.ofPattern("HH:mmXXX");
    private static final DateTimeFormatter LATER = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mmXXX");

    public String full(Instant at) {
        return FULL.format(at.atZone(zone));
    }

    public String time(Instant at) {
        return TIME.format(at.atZone(zone));
    }

    /** To the minute, as an expectation deserves; with the date when it is not the day of {@code now}. */
    public String expected(Instant at, Instant now) {
        Instant rounded = at.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES);
        boolean today =
                rounded.atZone(zone).toLocalDate().equals(now.atZone(zone).toLocalDate());
        return (today ? SOON : LATER).format(rounded.atZone(zone));
    }

    /** {@code 40 s}, {@code 12 min}, {@code 3 h 05 min}; never negative. */
    public static String length(Duration duration) {
        long seconds = Math.max(0, duration.toSeconds());
        if (seconds < 90) {
            return seconds + "\u202fs";
        }
        long minutes = (seconds + 30) / 60;
        if (minutes < 60) {
            return minutes + "\u202fmin";
        }
        return minutes / 60 + "\u202fh\u00a0" + (minutes % 60 < 10 ? "0" : "") + minutes % 60 + "\u202fmin";
    }
}
