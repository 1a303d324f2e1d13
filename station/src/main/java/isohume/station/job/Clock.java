// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;

/** What a person says of an instrument's clock. */
public sealed interface Clock {
    /** Nothing: it is found by the likeness of the records. */
    record Unknown() implements Clock {}

    /** It agreed with the reference's within this. */
    record Same(Duration within) implements Clock {}

    /** Both clocks noted twice. */
    record Noted(Instant logger, Instant reference, Instant laterLogger, Instant laterReference) implements Clock {}

    /**
     * Reads {@code same}, {@code same±30} (seconds) or {@code LOGGER/REFERENCE,LOGGER/REFERENCE}, two moments noted by
     * both clocks.
     */
    static Clock read(String text) {
        if (text.matches("same((±|\\+-)\\d{1,5})?")) {
            String seconds = text.replaceAll("\\D", "");
            return new Same(Duration.ofSeconds(seconds.isEmpty() ? 5 : Long.parseLong(seconds)));
        }
        String[] times = text.split("[/,]", -1);
        if (times.length == 4) {
            try {
                return new Noted(time(times[0]), time(times[1]), time(times[2]), time(times[3]));
            } catch (DateTimeParseException unfit) {
                // told below
            }
        }
        throw new IllegalArgumentException("the clock is said to be \"" + text
                + "\"; write same, same±30 (in seconds), or two moments as LOGGER/REFERENCE,LOGGER/REFERENCE, each as"
                + " 2026-03-31T08:00:00+02:00");
    }

    private static Instant time(String text) {
        return OffsetDateTime.parse(text.strip()).toInstant();
    }
}
