// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** ISO 8601 dates and times in the certificate's zone, to the second. */
record Dates(ZoneId zone) {
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssXXX", Locale.ROOT);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    String moment(Instant at) {
        return MOMENT.format(at.truncatedTo(ChronoUnit.SECONDS).atZone(zone));
    }

    /** From one instant to another; the second without its date when that is the same. */
    String span(Instant from, Instant to) {
        boolean sameDay = from.atZone(zone).toLocalDate().equals(to.atZone(zone).toLocalDate());
        return moment(from) + Figures.NO_BREAK + "to " + (sameDay ? CLOCK.format(to.atZone(zone)) : moment(to));
    }
}
