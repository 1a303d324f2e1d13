// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Figures from outside the project, each row with its source beside it. The tables lie in the test resources of this
 * package; what "read", "computed" and "memory" in their provenance columns mean is said in the README there.
 */
public final class Printed {
    private Printed() {}

    /** One row of a table, by column name. */
    public record Row(Map<String, String> cells) {
        public String text(String column) {
            return Objects.requireNonNull(cells.get(column), column);
        }

        public double number(String column) {
            return "inf".equals(text(column)) ? Double.POSITIVE_INFINITY : Double.parseDouble(text(column));
        }

        public double[] numbers(String column) {
            return java.util.Arrays.stream(text(column).split(";"))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
        }

        public boolean has(String column) {
            return !text(column).isEmpty();
        }

        @Override
        public String toString() {
            return cells.values().toString();
        }
    }

    /** All rows of a table. */
    public static List<Row> table(String name) {
        try (InputStream in = Printed.class.getResourceAsStream(name)) {
            String text = new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
            List<List<String>> lines = text.lines().map(Printed::cells).toList();
            List<Row> rows = new ArrayList<>();
            for (List<String> line : lines.subList(1, lines.size())) {
                Map<String, String> cells = new LinkedHashMap<>();
                for (int i = 0; i < line.size(); i++) {
                    cells.put(lines.getFirst().get(i), line.get(i));
                }
                rows.add(new Row(cells));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The row with this identity in the column {@code id}. */
    public static Row row(String table, String id) {
        return table(table).stream()
                .filter(row -> row.text("id").equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** A column as numbers. */
    public static double[] column(List<Row> rows, String name) {
        return rows.stream().mapToDouble(row -> row.number(name)).toArray();
    }

    /** Compares with a figure as it stands in print: within a number of units of its last digit. */
    public static void assertDigits(String printed, double found, double units, String what) {
        double unit = new BigDecimal(printed).ulp().doubleValue();
        assertEquals(Double.parseDouble(printed), found, units * unit * (1 + 1e-9), what);
    }

    /** Compares relatively. */
    public static void assertRelative(double expected, double found, double tolerance, String what) {
        assertEquals(expected, found, Math.abs(expected) * tolerance, what);
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
