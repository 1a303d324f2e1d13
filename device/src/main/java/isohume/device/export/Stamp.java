// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date, a time of the day or both, as written. Which number of the date is the day and which the month is left open.
 */
record Stamp(Optional<Date> date, Optional<LocalTime> time, Optional<ZoneOffset> offset, boolean seconds) {
    private static final String MONTH = "\\p{L}{3,9}\\.?";
    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,4})([./-])(\\d{1,2})\\2(\\d{1,4})");
    private static final Pattern DAY_AND_NAME =
            Pattern.compile("(\\d{1,2})\\.?[ ./-](" + MONTH + ")[ ./,-]{1,2}(\\d{4}|\\d\\d)");
    private static final Pattern NAME_AND_DAY = Pattern.compile("(" + MONTH + ") (\\d{1,2}),? (\\d{4})");
    private static final Pattern PACKED = Pattern.compile("(\\d{4})(\\d\\d)(\\d\\d)");
    private static final Pattern CLOCK = Pattern.compile(
            "(\\d{1,2})[:.h](\\d\\d)(?:[:.m](\\d\\d)(?:[.,:](\\d{1,9}))?)?s?(?:\\s*([AaPp])\\.?\\s?[Mm]\\.?)?");
    private static final Pattern NUMBER = Pattern.compile("\\d+\\.\\d+");
    private static final Pattern PACKED_CLOCK = Pattern.compile("(\\d\\d)(\\d\\d)(\\d\\d)?(?!\\d)");
    private static final Pattern ZONE =
            Pattern.compile("\\s*(Z|(?:UTC|GMT)?\\s?[+-]\\d\\d?(?::?\\d\\d)?|UTC|GMT|CET|CEST|MEZ|MESZ)");
    private static final Pattern WEEKDAY = Pattern.compile("^\\p{L}{2,10}\\.?,? (?=\\d)");
    private static final Map<String, Integer> NAMED =
            Map.of("UTC", 0, "GMT", 0, "Z", 0, "CET", 1, "MEZ", 1, "CEST", 2, "MESZ", 2);

    /**
     * The numbers of a date in the order written.
     *
     * @param named whether the month was a word, which settles the order; then the order here is year, month, day
     */
    record Date(int first, int second, int third, char separator, boolean fourDigits, boolean named) {
        /** Whether the year cannot stand anywhere else than in front. */
        boolean yearFirst() {
            return named || first > 31;
        }

        Optional<LocalDate> by(DateOrder order) {
            return switch (yearFirst() ? DateOrder.YEAR_FIRST : order) {
                case YEAR_FIRST -> valid(first, second, third);
                case DAY_FIRST -> valid(third, second, first);
                case MONTH_FIRST -> valid(third, first, second);
            };
        }

        private Optional<LocalDate> valid(int year, int month, int day) {
            if (fourDigits != year > 99) {
                return Optional.empty();
            }
            try {
                return Optional.of(LocalDate.of(year < 100 ? 2000 + year : year, month, day));
            } catch (DateTimeException none) {
                return Optional.empty();
            }
        }
    }

    /** What a cell says, if it is a date, a time or both and nothing else. */
    static Optional<Stamp> of(String cell) {
        String text = cell.strip().replace('\u00A0', ' ').replace('\u202F', ' ');
        if (text.length() < 4 || text.length() > 60) {
            return Optional.empty();
        }
        return plain(text).or(() -> plain(WEEKDAY.matcher(text).replaceFirst("")));
    }

    private static Optional<Stamp> plain(String plain) {
        return both(plain)
                .or(() -> clock(plain)
                        .filter(time -> !PACKED_CLOCK.matcher(plain).lookingAt()
                                && !NUMBER.matcher(plain).matches())
                        .map(time -> new Stamp(Optional.empty(), time.at(), time.offset(), time.seconds())))
                .or(() -> date(plain)
                        .map(date -> new Stamp(Optional.of(date), Optional.empty(), Optional.empty(), false)));
    }

    /** This date with the time of another cell. */
    Stamp with(Stamp other) {
        return new Stamp(date, other.time, other.offset, other.seconds);
    }

    /** When it was, by the clock that wrote it; a date alone is none. */
    Optional<LocalDateTime> local(DateOrder order) {
        return date.flatMap(d -> d.by(order)).flatMap(d -> time.map(d::atTime));
    }

    private static Optional<Stamp> both(String text) {
        for (Pattern pattern : new Pattern[] {NUMBERS, DAY_AND_NAME, NAME_AND_DAY, PACKED}) {
            Matcher start = pattern.matcher(text);
            if (start.lookingAt() && start.end() < text.length()) {
                String rest = text.substring(start.end());
                Matcher joint = Pattern.compile("(T|,? +|,|_|-)(?=\\d)").matcher(rest);
                if (joint.lookingAt()) {
                    Optional<Clock> clock = clock(rest.substring(joint.end()));
                    Optional<Date> date = date(text.substring(0, start.end()));
                    if (clock.isPresent() && date.isPresent()) {
                        Clock at = clock.get();
                        return Optional.of(new Stamp(date, at.at(), at.offset(), at.seconds()));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Date> date(String text) {
        Matcher numbers = NUMBERS.matcher(text);
        if (numbers.matches()) {
            int lengthFirst = numbers.group(1).length();
            int lengthLast = numbers.group(4).length();
            boolean four = lengthFirst == 4 || lengthLast == 4;
            if (lengthFirst == 3 || lengthLast == 3 || (lengthFirst == 4 && lengthLast > 2)) {
                return Optional.empty();
            }
            return Optional.of(new Date(
                    number(numbers, 1),
                    number(numbers, 3),
                    number(numbers, 4),
                    numbers.group(2).charAt(0),
                    four,
                    false));
        }
        Matcher day = DAY_AND_NAME.matcher(text);
        if (day.matches()) {
            return named(day.group(3), day.group(2), day.group(1));
        }
        Matcher name = NAME_AND_DAY.matcher(text);
        if (name.matches()) {
            return named(name.group(3), name.group(1), name.group(2));
        }
        Matcher packed = PACKED.matcher(text);
        if (packed.matches()) {
            Date date = new Date(number(packed, 1), number(packed, 2), number(packed, 3), ' ', true, false);
            return date.first() >= 1990
                            && date.first() < 2100
                            && date.by(DateOrder.YEAR_FIRST).isPresent()
                    ? Optional.of(date)
                    : Optional.empty();
        }
        return Optional.empty();
    }

    private static Optional<Date> named(String year, String month, String day) {
        return MonthName.number(month)
                .map(m -> new Date(Integer.parseInt(year), m, Integer.parseInt(day), ' ', year.length() == 4, true));
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }

    private record Clock(Optional<LocalTime> at, Optional<ZoneOffset> offset, boolean seconds) {}

    private static Optional<Clock> clock(String text) {
        Matcher clock = CLOCK.matcher(text);
        boolean spelt = clock.lookingAt();
        Matcher packed = PACKED_CLOCK.matcher(text);
        if (!spelt && !packed.lookingAt()) {
            return Optional.empty();
        }
        Matcher found = spelt ? clock : packed;
        String rest = text.substring(found.end());
        Optional<ZoneOffset> offset = offset(rest);
        if (!rest.isBlank() && offset.isEmpty()) {
            return Optional.empty();
        }
        boolean seconds = found.group(3) != null;
        return time(found, spelt).map(at -> new Clock(Optional.of(at), offset, seconds));
    }

    private static Optional<LocalTime> time(Matcher found, boolean spelt) {
        int hour = number(found, 1);
        String half = spelt ? found.group(5) : null;
        if (half != null) {
            if (hour < 1 || hour > 12) {
                return Optional.empty();
            }
            hour = hour % 12 + (half.toLowerCase(Locale.ROOT).equals("p") ? 12 : 0);
        }
        String fraction = spelt && found.group(4) != null ? found.group(4) : "";
        int nanos = fraction.isEmpty() ? 0 : Integer.parseInt((fraction + "00000000").substring(0, 9));
        try {
            return Optional.of(
                    LocalTime.of(hour, number(found, 2), found.group(3) == null ? 0 : number(found, 3), nanos));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }

    /** A distance from UTC: {@code +01:00}, {@code UTC+1}, {@code Z}. */
    static Optional<ZoneOffset> offset(String text) {
        Matcher zone = ZONE.matcher(text);
        if (!zone.matches()) {
            return Optional.empty();
        }
        String said = zone.group(1).replace(" ", "");
        if (NAMED.containsKey(said)) {
            return Optional.of(ZoneOffset.ofHours(NAMED.get(said)));
        }
        String digits = said.replaceFirst("UTC|GMT", "");
        String number = digits.substring(1).replace(":", "");
        int hours = Integer.parseInt(number.length() <= 2 ? number : number.substring(0, number.length() - 2));
        int minutes = number.length() <= 2 ? 0 : Integer.parseInt(number.substring(number.length() - 2));
        int sign = digits.charAt(0) == '-' ? -1 : 1;
        return hours > 14 || minutes > 59
                ? Optional.empty()
                : Optional.of(ZoneOffset.ofHoursMinutes(sign * hours, sign * minutes));
    }
}
