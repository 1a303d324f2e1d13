// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.nio.charset.Charset;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How the exports of one kind of logger are read. Its form as a document is described in
 * {@code docs/formats/import-profile.md}.
 *
 * @param title what people call it
 * @param headings rows of headings: 0, 1 or 2 (names, units)
 * @param gaps cells that stand for a missing value, besides empty ones and dashes
 */
public record Profile(
        String title,
        Charset encoding,
        Delimiter delimiter,
        DecimalSign decimalSign,
        boolean grouped,
        int headings,
        Times times,
        List<LoggedColumn> columns,
        Set<String> gaps,
        Doubled doubled) {
    public Profile {
        columns = List.copyOf(columns);
        gaps = Set.copyOf(gaps);
    }

    /**
     * How times are read.
     *
     * @param headings of the date's and the clock's column; empty texts if there are none
     * @param order of dates; has no meaning for counted times
     * @param zone of the clock; nothing where each time says how far it is from UTC, or is counted in UTC
     */
    public record Times(
            TimeColumns columns,
            List<String> headings,
            DateOrder order,
            Optional<ZoneId> zone,
            Optional<ClockHabit> clock) {
        public Times {
            headings = List.copyOf(headings);
        }
    }

    /** The same with what is known of the clock. */
    Profile with(ClockHabit habit) {
        Times known = new Times(times.columns, times.headings, times.order, times.zone, Optional.of(habit));
        return new Profile(title, encoding, delimiter, decimalSign, grouped, headings, known, columns, gaps, doubled);
    }

    /** Reads the document of a profile, called {@code name} in errors. */
    public static Profile read(String document, String name) {
        return ProfileSheet.read(document, name);
    }

    /** The document of this profile. */
    public String document() {
        return ProfileSheet.write(this);
    }
}
