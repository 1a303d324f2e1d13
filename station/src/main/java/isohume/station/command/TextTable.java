// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Columns of plain text under their heads. */
final class TextTable {
    private static final String GAP = "  ";
    private static final String RIGHT = ">";

    private final List<List<String>> rows = new ArrayList<>();
    private final List<Boolean> toTheRight;

    /** @param heads one that begins with {@code >} is a column of figures and stands to the right */
    TextTable(List<String> heads) {
        toTheRight = heads.stream().map(head -> head.startsWith(RIGHT)).toList();
        rows.add(heads.stream()
                .map(head -> head.startsWith(RIGHT) ? head.substring(1) : head)
                .toList());
    }

    void row(List<String> cells) {
        if (cells.size() != toTheRight.size()) {
            throw new IllegalArgumentException(cells.size() + " cells for " + toTheRight.size() + " columns");
        }
        rows.add(List.copyOf(cells));
    }

    void write(PrintWriter to) {
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                String room = " ".repeat(width(i) - row.get(i).length());
                line.append(toTheRight.get(i) ? room + row.get(i) : row.get(i) + room)
                        .append(GAP);
            }
            to.println(line.toString().stripTrailing());
        }
    }

    private int width(int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }
}
