// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.export.Question.Choice;
import isohume.device.export.TimeColumns.Counting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where in a file the readings are.
 *
 * @param before lines above the headings
 * @param names the row of headings; empty if there is none
 * @param units a row of units below the headings; empty if there is none
 * @param first the first line of readings, from 1
 * @param width cells in a row
 * @param times the columns that may be the time
 */
record Layout(
        Delimiter delimiter,
        List<String> before,
        List<String> names,
        List<String> units,
        int first,
        int width,
        List<TimeColumns> times) {
    private static final int RUN = 20;

    /** The layout, unless none or more than one is recognised in the first lines; then the doubts have it. */
    static Optional<Layout> of(List<String> lines, Doubts doubts) {
        List<Layout> found = new ArrayList<>();
        for (Delimiter delimiter : Delimiter.values()) {
            if (!delimiter.hidesEmptyCells()) {
                new Search(delimiter, lines).layout().ifPresent(found::add);
            }
        }
        if (found.isEmpty()) {
            byBlanks(lines).ifPresent(found::add);
        }
        if (found.isEmpty()) {
            doubts.wrong(
                    0,
                    0,
                    "no rows of readings were found in the first " + lines.size() + " lines",
                    "a row needs a date, a time of the day and a number, with semicolons, tabs, commas, bars or blanks"
                            + " between them");
            return Optional.empty();
        }
        if (found.size() == 1) {
            found.getFirst().refuseCommasForTenths(lines, doubts);
            return Optional.of(found.getFirst());
        }
        List<Choice> choices = found.stream()
                .map(l -> new Choice(Doubts.word(l.delimiter), "makes rows of " + l.width + " cells"))
                .toList();
        return doubts.ask(
                        "delimiter",
                        "What separates the cells?",
                        choices,
                        List.of("line " + found.getFirst().first + ": " + lines.get(found.getFirst().first - 1)))
                .flatMap(word -> found.stream()
                        .filter(l -> Doubts.word(l.delimiter).equals(word))
                        .findFirst());
    }

    /** Set apart by blanks; by wide ones, if only these make rows that are all alike, or have headings over them. */
    private static Optional<Layout> byBlanks(List<String> lines) {
        Optional<Layout> wide = new Search(Delimiter.BLANKS, lines).layout().filter(l -> l.width > 1);
        Optional<Layout> any = new Search(Delimiter.BLANK, lines).layout();
        if (wide.isEmpty() || any.isEmpty()) {
            return wide.or(() -> any);
        }
        Comparator<Layout> better =
                Comparator.<Layout>comparingInt(l -> l.uneven(lines)).thenComparing(l -> l.names.isEmpty());
        return better.compare(any.get(), wide.get()) < 0 ? any : wide;
    }

    /** Rows with a time that have more or fewer cells than most. */
    private int uneven(List<String> lines) {
        return (int) lines.subList(first - 1, lines.size()).stream()
                .map(delimiter::cells)
                .filter(cells -> times.getFirst().in(cells) && cells.size() != width)
                .count();
    }

    /** A line above with fewer cells than the readings gives away that commas stand before the tenths, too. */
    private void refuseCommasForTenths(List<String> lines, Doubts doubts) {
        int above = first - 2;
        List<String> row = delimiter.cells(lines.get(first - 1));
        boolean lastIsEmpty = !row.isEmpty() && row.getLast().isBlank();
        if (delimiter != Delimiter.COMMA || names.size() >= width || above < 0 || lastIsEmpty) {
            return;
        }
        List<String> cells = delimiter.cells(lines.get(above));
        if (cells.size() > 1 && cells.size() < width && cells.stream().noneMatch(DecimalSign::isNumber)) {
            doubts.wrong(
                    first,
                    0,
                    "the headings have " + cells.size() + " cells and the readings " + width,
                    "if commas stand between the cells and before the tenths, export it again with semicolons");
        }
    }

    /** The unit that stands in the row of units, or nothing. */
    String unit(int column) {
        return column <= units.size() ? units.get(column - 1) : "";
    }

    /** A column's heading, or nothing. */
    String name(int column) {
        return column <= names.size() ? names.get(column - 1).strip() : "";
    }

    /** Rows of headings: 0, 1 or 2. */
    int headings() {
        return (names.isEmpty() ? 0 : 1) + (units.isEmpty() ? 0 : 1);
    }

    /** The search for rows of readings with one delimiter. */
    private static final class Search {
        private static final Pattern TIME = Pattern.compile(
                "(?iu)(^|[^\\p{L}])(date|time|datum|zeit|uhrzeit|datetime|timestamp|heure|hora|ora|fecha|data|tijd)([^\\p{L}]|$)");

        private final Delimiter delimiter;
        private final List<String> lines;
        private final List<List<String>> rows;

        Search(Delimiter delimiter, List<String> lines) {
            this.delimiter = delimiter;
            this.lines = lines;
            rows = lines.stream().map(delimiter::cells).toList();
        }

        Optional<Layout> layout() {
            Map<TimeColumns, Integer> counts = new LinkedHashMap<>();
            for (List<String> cells : rows) {
                if (cells.size() > 1) {
                    TimeColumns.possibleIn(cells).forEach(t -> counts.merge(t, 1, Integer::sum));
                }
            }
            int most = counts.values().stream().mapToInt(n -> n).max().orElse(0);
            List<TimeColumns> times = counts.entrySet().stream()
                    .filter(t -> t.getValue() * 2 > most)
                    .map(Map.Entry::getKey)
                    .toList();
            return times.isEmpty() ? counted() : from(times, start(times.getFirst(), 0));
        }

        /** Rows of numbers only, whose time is a count. */
        private Optional<Layout> counted() {
            for (int i = 0; i + 3 <= rows.size(); i++) {
                int last = Math.min(rows.size(), i + RUN);
                List<List<String>> run =
                        rows.subList(i, last).stream().filter(r -> !r.isEmpty()).toList();
                int width = rows.get(i).size();
                for (Counting counting : Counting.values()) {
                    for (int column = 1; column <= width && width > 1; column++) {
                        TimeColumns time = new TimeColumns(counting, column, column);
                        if (TimeColumns.countsUp(run, time) && called(counting, i, column)) {
                            return from(List.of(time), i);
                        }
                    }
                }
            }
            return Optional.empty();
        }

        /** Days of a spreadsheet look like any number, so their heading has to say what they are. */
        private boolean called(Counting counting, int first, int column) {
            if (counting != Counting.SPREADSHEET_DAYS) {
                return true;
            }
            return first > 0
                    && rows.get(first - 1).size() >= column
                    && rows.get(first - 1)
                            .get(column - 1)
                            .toLowerCase(Locale.ROOT)
                            .matches(".*(date|time|datum|zeit|fecha|hora|data).*");
        }

        /** The first row with a time of which half of the rows behind it have one too; -1 if there is none. */
        private int start(TimeColumns time, int from) {
            for (int i = from; i < rows.size(); i++) {
                int last = Math.min(rows.size(), i + RUN);
                long data = rows.subList(i, last).stream().filter(time::in).count();
                if (time.in(rows.get(i)) && data * 2 >= last - i) {
                    return i;
                }
            }
            return -1;
        }

        private Optional<Layout> from(List<TimeColumns> times, int start) {
            if (start < 0) {
                return Optional.empty();
            }
            int width = width(times.getFirst(), start);
            int above = filledAbove(start);
            List<String> names = heading(above, times.getFirst(), width);
            List<String> units = List.of();
            int first = above;
            if (!names.isEmpty() && isUnits(names)) {
                int higher = filledAbove(above);
                List<String> higherNames = heading(higher, times.getFirst(), width);
                if (!higherNames.isEmpty()) {
                    units = names;
                    names = higherNames;
                    first = higher;
                }
            }
            List<String> before = lines.subList(0, names.isEmpty() ? start : first);
            return Optional.of(new Layout(delimiter, before, names, units, start + 1, width, times));
        }

        private int width(TimeColumns time, int start) {
            Map<Integer, Integer> counts = new LinkedHashMap<>();
            rows.subList(start, rows.size()).stream()
                    .filter(time::in)
                    .forEach(r -> counts.merge(r.size(), 1, Integer::sum));
            return counts.entrySet().stream()
                    .max(Map.Entry.comparingByValue())
                    .map(Map.Entry::getKey)
                    .orElse(rows.get(start).size());
        }

        private int filledAbove(int row) {
            int above = row - 1;
            while (above >= 0 && lines.get(above).isBlank()) {
                above--;
            }
            return above;
        }

        /** The row as headings: about as wide as the readings, and no numbers in it. */
        private List<String> heading(int row, TimeColumns time, int width) {
            if (row < 0) {
                return List.of();
            }
            List<String> cells = rows.get(row);
            int filled = cells.size();
            while (filled > 0 && cells.get(filled - 1).isBlank()) {
                filled--;
            }
            boolean words = cells.stream().noneMatch(c -> DecimalSign.isNumber(c.strip()) && !c.matches(".*\\p{L}.*"));
            int spare = delimiter.hidesEmptyCells() ? 0 : 1;
            boolean fits = filled >= Math.max(2, width - spare) && filled <= width + spare && cells.size() > 1;
            return fits && words && (filled == width || !shifted(cells, time)) ? cells.subList(0, filled) : List.of();
        }

        /** Whether headings that are more or fewer than the columns stand over the wrong ones, by those of the time. */
        private static boolean shifted(List<String> cells, TimeColumns time) {
            List<Integer> said = new ArrayList<>();
            for (int i = 0; i < cells.size(); i++) {
                if (TIME.matcher(cells.get(i)).find()) {
                    said.add(i + 1);
                }
            }
            return time.half() > 0
                    || !said.stream().allMatch(time::has)
                    || (!said.isEmpty() && !said.contains(time.clock()))
                    || (said.isEmpty() && time.clock() != time.date());
        }

        private static boolean isUnits(List<String> cells) {
            long units = cells.stream().filter(c -> Heading.unit(c).isPresent()).count();
            long words = cells.stream()
                    .filter(c -> !c.isBlank() && Heading.unit(c).isEmpty())
                    .count();
            return units > 0 && units >= words;
        }
    }
}
