// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.imports;

import io.quarkus.qute.TemplateData;
import isohume.station.web.Figure;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Round values and round times of the day on the axes of a chart. */
public final class Marks {
    private static final long[] MINUTES = {1, 2, 5, 10, 15, 30, 60, 120, 180, 360, 720, 1440, 2880, 10_080};
    private static final int MOST_TIMES = 8;
    private static final int MOST_VALUES = 5;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private Marks() {}

    /**
     * A mark.
     *
     * @param place along its axis
     * @param below a date, where it is another one than at the mark before; otherwise empty
     */
    @TemplateData
    public record Mark(String place, String label, String below) {}

    /** Marks of times in seconds since 1970, on an axis of that length; the day begins at midnight of the zone. */
    static List<Mark> times(double from, double to, double length, ZoneId zone) {
        long step = 60 * MINUTES[MINUTES.length - 1];
        for (int i = MINUTES.length - 1; i >= 0 && (to - from) / (60 * MINUTES[i]) <= MOST_TIMES; i--) {
            step = 60 * MINUTES[i];
        }
        while ((to - from) / step > MOST_TIMES) {
            step *= 2;
        }
        List<Mark> marks = new ArrayList<>();
        LocalDate shown = LocalDate.MIN;
        long midnight = Instant.ofEpochSecond((long) from)
                .atZone(zone)
                .toLocalDate()
                .atStartOfDay(zone)
                .toEpochSecond();
        for (long at = midnight; at <= to; at += step) {
            if (at >= from) {
                ZonedDateTime local = Instant.ofEpochSecond(at).atZone(zone);
                boolean another = !local.toLocalDate().equals(shown);
                shown = local.toLocalDate();
                marks.add(new Mark(
                        place(length * (at - from) / (to - from)),
                        CLOCK.format(local),
                        another ? shown.toString() : ""));
            }
        }
        return marks;
    }

    /** Marks of values, from the bottom of an axis of that length upwards. */
    static List<Mark> values(double least, double most, double length) {
        double rough = (most - least) / MOST_VALUES;
        double ten = Math.pow(10, Math.floor(Math.log10(rough)));
        double step = 10 * ten;
        for (double factor : new double[] {5, 2, 1}) {
            step = factor * ten >= rough ? factor * ten : step;
        }
        int decimals = Math.max(0, (int) -Math.floor(Math.log10(step)));
        List<Mark> marks = new ArrayList<>();
        for (double at = Math.ceil(least / step) * step; at <= most + step / 1e6; at += step) {
            String place = place(length * (1 - (at - least) / (most - least)));
            marks.add(new Mark(place, Figure.of(at, decimals).toString(), ""));
        }
        return marks;
    }

    private static String place(double at) {
        return String.format(Locale.ROOT, "%.1f", at);
    }
}
