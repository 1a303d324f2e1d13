// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;

/** Published and independently computed figures from the test resources, each with its source. */
final class Figures {
    /** One line of a table; a column is asked for by its heading. */
    record Row(String file, int line, Map<String, String> cells) {
        String text(String column) {
            return Objects.requireNonNull(cells.get(column), () -> file + " has no column " + column);
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }

        boolean is(String column, String value) {
            return text(column).equals(value);
        }

        /** The number that follows a name in a cell such as {@code t=20;t_d=10;p=101325}. */
        double given(String name) {
            return Double.parseDouble(givenText(name).split("[^-0-9.eE]", 2)[0]);
        }

        boolean gives(String name) {
            return (";" + text("input")).contains(";" + name + "=");
        }

        private String givenText(String name) {
            String input = ";" + text("input");
            int at = input.indexOf(";" + name + "=");
            if (at < 0) {
                throw new IllegalArgumentException(this + " does not give " + name);
            }
            return input.substring(at + name.length() + 2);
        }

        @Override
        public String toString() {
            return file + " line " + line + " (" + cells.getOrDefault("source", "") + ")";
        }
    }

    private Figures() {}

    /** The rows that somebody else read or computed; what stands there from memory is left out. */
    static List<Row> of(String file, Predicate<Row> wanted) {
        List<Row> rows = all(file).stream()
                .filter(row -> !row.is("provenance", "memory"))
                .filter(wanted)
                .toList();
        if (rows.isEmpty()) {
            throw new IllegalStateException("no row of " + file + " was selected: the test would check nothing");
        }
        return rows;
    }

    /** The rows that were written down from memory. */
    static List<Row> fromMemory(String file, Predicate<Row> wanted) {
        return all(file).stream()
                .filter(row -> row.is("provenance", "memory"))
                .filter(wanted)
                .toList();
    }

    /** What a table calls by a name. */
    static <V> V named(Map<String, V> names, String name) {
        return Objects.requireNonNull(names.get(name), name);
    }

    static List<Row> all(String file) {
        List<Row> rows = new ArrayList<>();
        try (BufferedReader lines = open(file)) {
            List<String> heading = cells(Objects.requireNonNull(lines.readLine()));
            int number = 1;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                number++;
                rows.add(new Row(file, number, byHeading(heading, cells(line))));
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return rows;
    }

    private static BufferedReader open(String file) {
        return new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Figures.class.getResourceAsStream(file), file), StandardCharsets.UTF_8));
    }

    private static Map<String, String> byHeading(List<String> heading, List<String> cells) {
        Map<String, String> row = new HashMap<>();
        for (int i = 0; i < heading.size(); i++) {
            row.put(heading.get(i), cells.get(i));
        }
        return row;
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
