// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The figures of each part of a whole, one line for each part.
 *
 * @param of what the parts are called, for example {@code bench}
 * @param lines the figures of each part, all with the same names in the same order
 */
public record Parts(String of, Map<String, List<Figure>> lines) {
    static final Parts NONE = new Parts("", Map.of());

    public Parts {
        lines = new LinkedHashMap<>(lines);
    }

    /** Every figure with its part's name before it. */
    Stream<Figure> figures() {
        return lines.entrySet().stream()
                .flatMap(line -> line.getValue().stream()
                        .map(f -> Figure.of(line.getKey() + ": " + f.name(), f.value(), f.unit())));
    }

    /** As people read it, with an empty line behind it; empty without parts. */
    String table() {
        if (lines.isEmpty()) {
            return "";
        }
        List<List<String>> rows = new ArrayList<>();
        List<Figure> first = lines.values().iterator().next();
        rows.add(cells(of, first.stream().map(Figure::name)));
        rows.add(cells("", first.stream().map(Figure::unit)));
        lines.forEach((part, figures) -> rows.add(cells(part, figures.stream().map(f -> Report.short3(f.value())))));
        return rows.stream().map(row -> line(row, rows)).collect(Collectors.joining()) + System.lineSeparator();
    }

    private static List<String> cells(String first, Stream<String> others) {
        return Stream.concat(Stream.of(first), others).toList();
    }

    private static String line(List<String> row, List<List<String>> all) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < row.size(); i++) {
            int column = i;
            int width = all.stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
            String space = " ".repeat(width - row.get(i).length());
            text.append(i == 0 ? row.get(i) + space : "  " + space + row.get(i));
        }
        return text.toString().stripTrailing() + System.lineSeparator();
    }
}
