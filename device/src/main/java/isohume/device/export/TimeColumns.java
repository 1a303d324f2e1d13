// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Where the time of a row stands and how it is counted.
 *
 * @param date the column's number, from 1
 * @param clock the column with the time of the day; as {@code date} where one column has both
 * @param half the column that says AM or PM; 0 where it stands with the time, or the day has 24 hours
 */
public record TimeColumns(Counting counting, int date, int clock, int half) {
    /** How a time is written. */
    public enum Counting {
        /** As a date and a time of the day. */
        CALENDAR,
        /** Seconds since 1970 in UTC. */
        UNIX_SECONDS,
        /** Milliseconds since 1970 in UTC. */
        UNIX_MILLISECONDS,
        /** Days since 30 December 1899 by the local clock, as spreadsheets count them. */
        SPREADSHEET_DAYS
    }

    private static final BigDecimal DAY = BigDecimal.valueOf(86_400_000);
    private static final Pattern HALF = Pattern.compile("[AaPp]\\.? ?[Mm]\\.?");

    TimeColumns(Counting counting, int date, int clock) {
        this(counting, date, clock, 0);
    }

    /** Whether a column is one of these. */
    boolean has(int column) {
        return column == date || column == clock || column == half;
    }

    /** The stamp of a row, if the row has one. */
    Optional<Stamp> stamp(List<String> cells) {
        if (cells.size() < Math.max(half, Math.max(date, clock))) {
            return Optional.empty();
        }
        String time = cells.get(clock - 1);
        if (half > 0) {
            String said = cells.get(half - 1).strip();
            if (!HALF.matcher(said).matches()) {
                return Optional.empty();
            }
            time = time + " " + said;
        }
        if (clock == date) {
            return Stamp.of(time).filter(s -> s.date().isPresent() && s.time().isPresent());
        }
        Optional<Stamp> clocked = Stamp.of(time);
        return Stamp.of(cells.get(date - 1))
                .filter(s -> s.date().isPresent() && s.time().isEmpty())
                .flatMap(d -> clocked.filter(
                                c -> c.time().isPresent() && c.date().isEmpty())
                        .map(d::with));
    }

    /** The number that a row's time is counted in, as milliseconds since 1970; by the local clock for days. */
    Optional<Instant> counted(List<String> cells) {
        if (cells.size() < date) {
            return Optional.empty();
        }
        String cell = cells.get(date - 1).strip();
        Optional<BigDecimal> number =
                DecimalSign.POINT.number(cell, false).or(() -> DecimalSign.COMMA.number(cell, false));
        return number.filter(n -> within(counting, n)).map(this::instant);
    }

    private Instant instant(BigDecimal number) {
        BigDecimal millis = switch (counting) {
            case UNIX_SECONDS -> number.movePointRight(3);
            case UNIX_MILLISECONDS -> number;
            case SPREADSHEET_DAYS, CALENDAR ->
                number.subtract(BigDecimal.valueOf(25_569)).multiply(DAY);
        };
        return Instant.ofEpochMilli(millis.setScale(0, RoundingMode.HALF_EVEN).longValueExact());
    }

    /** Whether a number counts some time between 2000 and 2100. */
    private static boolean within(Counting counting, BigDecimal number) {
        return switch (counting) {
            case UNIX_SECONDS -> between(number, 946_684_800L, 4_102_444_800L);
            case UNIX_MILLISECONDS -> between(number, 946_684_800_000L, 4_102_444_800_000L);
            case SPREADSHEET_DAYS -> between(number, 36_526, 73_051);
            case CALENDAR -> false;
        };
    }

    private static boolean between(BigDecimal number, long from, long to) {
        return number.compareTo(BigDecimal.valueOf(from)) >= 0 && number.compareTo(BigDecimal.valueOf(to)) < 0;
    }

    /** Whether the row has a time here. */
    boolean in(List<String> cells) {
        return counting == Counting.CALENDAR
                ? stamp(cells).isPresent()
                : counted(cells).isPresent();
    }

    /** The columns that may be the time of a row, in the row's order. */
    static List<TimeColumns> possibleIn(List<String> cells) {
        List<Optional<Stamp>> stamps = cells.stream().map(Stamp::of).toList();
        int half = half(cells);
        List<TimeColumns> whole = columns(
                        stamps, s -> s.date().isPresent() && s.time().isPresent())
                .stream()
                .map(n -> new TimeColumns(Counting.CALENDAR, n, n, half))
                .toList();
        if (!whole.isEmpty()) {
            return whole;
        }
        List<Integer> clocks = columns(stamps, s -> s.date().isEmpty());
        List<TimeColumns> pairs = columns(stamps, s -> s.date().isPresent()).stream()
                .flatMap(d -> clocks.stream().map(c -> new TimeColumns(Counting.CALENDAR, d, c, half)))
                .toList();
        return pairs;
    }

    /** The one cell that says AM or PM; 0 if there is none, or more than one. */
    private static int half(List<String> cells) {
        int found = 0;
        for (int i = 0; i < cells.size(); i++) {
            if (HALF.matcher(cells.get(i).strip()).matches()) {
                if (found > 0) {
                    return 0;
                }
                found = i + 1;
            }
        }
        return found;
    }

    private static List<Integer> columns(List<Optional<Stamp>> stamps, Predicate<Stamp> which) {
        return IntStream.range(0, stamps.size())
                .filter(i -> stamps.get(i).filter(which).isPresent())
                .mapToObj(i -> i + 1)
                .toList();
    }

    /** Whether these rows count up in this column, which is how a counted time is recognised. */
    static boolean countsUp(List<List<String>> rows, TimeColumns columns) {
        Instant before = Instant.MIN;
        for (List<String> cells : rows) {
            Optional<Instant> at = columns.counted(cells);
            if (at.isEmpty() || !at.get().isAfter(before)) {
                return false;
            }
            before = at.get();
        }
        return rows.size() > 2;
    }
}
