// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.Unit;
import isohume.device.export.TimeColumns.Counting;
import isohume.device.recorded.Cells;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The rows of a file as a profile says that they are to be read. Rows after the last one that has a time are a footer. */
final class ByProfile implements Rows.Taker {
    private static final long MOST_CELLS = 10_000_000;
    private static final String DASHES = "[-–—_.*]{1,5}|--[.,]-+|(?i)n/?a|nan|null|none";

    private final Profile profile;
    private final int width;
    private final int spare;
    private final List<String> headings;
    private final Doubts doubts;
    private final RawRows rows;
    private final Map<String, Strange> strange = new LinkedHashMap<>();
    private final List<Late> odd = new ArrayList<>();
    private long gaps;
    private long firstGap;
    private long seen;
    private boolean seconds;

    /** A cell that is no reading, where it was first and how often it was there. */
    private record Strange(String cell, long line, int column, long count) {}

    /** A row that is none, to be told of once it is known that another row follows. */
    private record Late(long line, int column, String what, String remedy, boolean footer) {}

    ByProfile(Profile profile, int width, List<String> headings, Doubts doubts) {
        this.profile = profile;
        this.width = width;
        this.spare = profile.delimiter().hidesEmptyCells() ? 0 : 1; // a last cell that is empty may be left out
        this.headings = headings;
        this.doubts = doubts;
        rows = new RawRows(profile.columns().size());
    }

    RawRows rows() {
        return rows;
    }

    /** The last digit of the times. */
    Duration step() {
        return seconds || profile.times().columns().counting() != Counting.CALENDAR
                ? Duration.ofSeconds(1)
                : Duration.ofMinutes(1);
    }

    @Override
    public boolean take(List<String> cells, long line) {
        if (cells.stream().allMatch(String::isBlank)) {
            return true;
        }
        seen += cells.size();
        if (seen > MOST_CELLS) {
            doubts.wrong(line, 0, "the file has more than " + MOST_CELLS + " cells", "export it in parts");
            return false;
        }
        if (repeatsHeadings(cells)) {
            doubts.find(Finding.Kind.LEFT_OUT, line, "the headings come again; the line is passed over");
            return true;
        }
        Optional<Long> at = time(cells);
        if (at.isEmpty() || tooNarrow(cells) || cells.size() > width + spare) {
            odd.add(oddRow(cells, line, at.isPresent()));
            return odd.size() < 1000;
        }
        tellOdd();
        for (int i = 0; i < profile.columns().size(); i++) {
            cell(
                    profile.columns().get(i),
                    rows.cells(i),
                    DecimalSign.bare(cells.get(profile.columns().get(i).number() - 1)),
                    line);
        }
        rows.add(at.get(), line);
        return !doubts.full();
    }

    private boolean tooNarrow(List<String> cells) {
        return cells.size() < width - spare || profile.columns().stream().anyMatch(c -> c.number() > cells.size());
    }

    private boolean repeatsHeadings(List<String> cells) {
        return !headings.isEmpty()
                && cells.size() >= headings.size()
                && cells.subList(0, headings.size()).equals(headings);
    }

    private Optional<Long> time(List<String> cells) {
        TimeColumns columns = profile.times().columns();
        if (columns.counting() != Counting.CALENDAR) {
            return columns.counted(cells).map(Instant::toEpochMilli);
        }
        Optional<Stamp> stamp = columns.stamp(cells);
        stamp.ifPresent(s -> seconds |= s.seconds());
        return stamp.flatMap(this::millis);
    }

    /** By the clock that wrote it, or in UTC where each time says how far it is from that. */
    private Optional<Long> millis(Stamp stamp) {
        if (profile.times().zone().isPresent() == stamp.offset().isPresent()) {
            return Optional.empty();
        }
        ZoneOffset offset = stamp.offset().orElse(ZoneOffset.UTC);
        return stamp.local(profile.times().order())
                .map(at -> at.toInstant(offset).toEpochMilli());
    }

    private Late oddRow(List<String> cells, long line, boolean timed) {
        TimeColumns columns = profile.times().columns();
        if (timed) {
            return new Late(
                    line,
                    0,
                    "the line has " + cells.size() + (cells.size() == 1 ? " cell" : " cells") + ", the others have "
                            + width,
                    cells.size() > width ? "is there a separator inside a number or a text?" : "was it cut off?",
                    false);
        }
        int column = Math.min(columns.date(), cells.size());
        String cell = cells.get(column - 1).strip();
        if (columns.clock() != columns.date() && cells.size() >= columns.clock() && dateIsGood(cell)) {
            column = columns.clock();
            cell = cells.get(column - 1).strip();
        }
        boolean footer = cell.isEmpty() || !Character.isDigit(cell.charAt(0));
        return new Late(line, column, "\"" + cut(cell) + "\" is no time", remedy(), footer);
    }

    private boolean dateIsGood(String cell) {
        return Stamp.of(cell)
                .flatMap(Stamp::date)
                .flatMap(d -> d.by(profile.times().order()))
                .isPresent();
    }

    private String remedy() {
        return profile.times().columns().counting() == Counting.CALENDAR
                ? "a date (" + Doubts.word(profile.times().order()).replace('_', ' ')
                        + ") and a time of the day are needed" + " here"
                : "a count of "
                        + Doubts.word(profile.times().columns().counting()).replace('_', ' ') + " is needed here";
    }

    /** Lines among the readings that are none are faults. */
    private void tellOdd() {
        odd.forEach(row -> doubts.wrong(row.line, row.column, row.what, row.remedy));
        odd.clear();
    }

    /** Ends the pass: lines after the last reading are a footer, unless they look like readings. */
    void end() {
        for (Late row : odd) {
            if (row.footer) {
                doubts.find(Finding.Kind.LEFT_OUT, row.line, "the line after the readings is passed over");
            } else {
                doubts.wrong(row.line, row.column, row.what, row.remedy);
            }
        }
        if (gaps > 0) {
            doubts.find(Finding.Kind.GAPS, firstGap, gaps + (gaps == 1 ? " cell has" : " cells have") + " no value");
        }
        List<Strange> repeated = new ArrayList<>();
        for (Strange one : strange.values()) {
            if (one.count > 1 || one.cell.chars().noneMatch(Character::isDigit)) {
                repeated.add(one);
            } else {
                doubts.wrong(
                        one.line,
                        one.column,
                        "\"" + cut(one.cell) + "\" is " + whatItIs(one),
                        "correct it, or clear it if nothing was read");
            }
        }
        if (!repeated.isEmpty()) {
            ask(repeated);
        }
    }

    private String whatItIs(Strange one) {
        LoggedColumn column = profile.columns().stream()
                .filter(c -> c.number() == one.column)
                .findFirst()
                .orElseThrow();
        return number(column, one.cell).isPresent()
                ? "beyond anything that " + column.title() + " can be"
                : "no number with a decimal " + Doubts.word(profile.decimalSign()) + ", as " + column.title()
                        + " needs";
    }

    private void ask(List<Strange> repeated) {
        String value = String.join("|", repeated.stream().map(Strange::cell).toList());
        doubts.askFreely(
                "gaps",
                "Do these cells mean that nothing was read?",
                List.of(new Question.Choice(value, "yes: they are gaps")),
                repeated.stream()
                        .limit(20)
                        .map(s -> "line " + s.line + ", column " + s.column + ": \"" + cut(s.cell) + "\", " + s.count
                                + (s.count == 1 ? " time" : " times"))
                        .toList());
    }

    private void cell(LoggedColumn column, Cells into, String cell, long line) {
        if (cell.isEmpty() || cell.matches(DASHES) || profile.gaps().contains(cell)) {
            gaps++;
            firstGap = firstGap == 0 ? line : firstGap;
            into.addGap();
            return;
        }
        Optional<BigDecimal> number = number(column, cell);
        if (number.isPresent() && Plausible.is(column.quantity(), column.unit().toQuantity(number.get()))) {
            into.add(number.get());
            return;
        }
        into.addGap();
        if (strange.size() < 200 || strange.containsKey(cell)) {
            strange.merge(
                    cell,
                    new Strange(cell, line, column.number(), 1),
                    (old, one) -> new Strange(old.cell, old.line, old.column, old.count + 1));
        }
    }

    private Optional<BigDecimal> number(LoggedColumn column, String cell) {
        if (column.quantity() == Quantity.DEPOSIT) {
            return deposit(cell);
        }
        Optional<String> behind = DecimalSign.unitBehind(cell);
        if (behind.isPresent() && !sameUnit(behind.get(), column.unit())) {
            return Optional.empty();
        }
        boolean groups = profile.grouped() && column.quantity() == Quantity.PRESSURE; // nothing else reaches 1000
        return profile.decimalSign()
                .number(cell, groups)
                .filter(n -> n.precision() <= Cells.MOST_DIGITS && Math.abs(n.scale()) <= 100);
    }

    private static boolean sameUnit(String behind, Unit unit) {
        Optional<Unit> said = Heading.unit(behind);
        return said.equals(Optional.of(unit)) || (unit == Unit.PERCENT_RH && said.equals(Optional.of(Unit.PERCENT)));
    }

    private static Optional<BigDecimal> deposit(String cell) {
        return switch (cell.toLowerCase(Locale.ROOT)) {
            case "1", "water", "dew" -> Optional.of(BigDecimal.ONE);
            case "2", "ice", "frost" -> Optional.of(BigDecimal.TWO);
            default -> Optional.empty();
        };
    }

    private static String cut(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }
}
