// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A table ruled only horizontally, whose head is repeated on each page and whose figures stand on the decimal mark. */
final class Table {
    private static final double DIGIT = 0.497; // em, advance of a figure in the regular face
    private static final double MARK = 0.249; // em, advance of its full stop
    private static final double GAP = 0.6; // em, to the next column

    /**
     * A column and its head.
     *
     * @param unit below the title, may be empty
     * @param width share of the table's width, %
     */
    record Column(String title, String unit, double width, boolean figures) {
        static Column words(String title, double width) {
            return new Column(title, "", width, false);
        }

        static Column figures(String title, String unit, double width) {
            return new Column(title, unit, width, true);
        }
    }

    /** What stands in a cell. */
    sealed interface Cell {
        record Words(String text) implements Cell {}

        record Verdict(Optional<isohume.uncertainty.conformity.Verdict> verdict) implements Cell {}
    }

    static Cell cell(String text) {
        return new Cell.Words(text);
    }

    private final List<Column> columns;
    private final List<List<Cell>> rows = new ArrayList<>();

    Table(List<Column> columns) {
        this.columns = List.copyOf(columns);
    }

    void row(List<Cell> cells) {
        if (cells.size() != columns.size()) {
            throw new IllegalArgumentException(cells.size() + " cells for " + columns.size() + " columns");
        }
        rows.add(List.copyOf(cells));
    }

    void write(Markup to) {
        to.open("table", "class", "ruled");
        to.open("thead").open("tr");
        columns.forEach(c -> head(to, c));
        to.close().close().open("tbody");
        int[] decimals = decimals();
        for (List<Cell> row : rows) {
            to.open("tr");
            for (int i = 0; i < row.size(); i++) {
                write(to, columns.get(i), row.get(i), decimals[i]);
            }
            to.close();
        }
        to.close().close();
    }

    private static void head(Markup to, Column column) {
        to.open(
                "th",
                "scope",
                "col",
                "class",
                column.figures() ? "figure" : "words",
                "style",
                "width:" + column.width() + "%");
        if (column.title().length() == 1) {
            to.element("i", column.title());
        } else {
            to.text(column.title());
        }
        if (!column.unit().isEmpty()) {
            to.empty("br").element("span", Figures.unit(column.unit()), "class", "unit");
        }
        to.close();
    }

    private static void write(Markup to, Column column, Cell cell, int decimals) {
        switch (cell) {
            case Cell.Words words
            when column.figures() ->
                to.element("td", words.text(), "class", "figure", "style", indent(words.text(), decimals));
            case Cell.Words words -> to.element("td", words.text(), "class", "words");
            case Cell.Verdict verdict ->
                Verdicts.write(to.open("td", "class", "words"), verdict.verdict())
                        .close();
        }
    }

    /** Room for the digits that this figure lacks to the right. */
    private static String indent(String figure, int decimals) {
        int missing = decimals - Figures.decimalsOf(figure);
        double em = GAP + missing * DIGIT + (missing > 0 && missing == decimals ? MARK : 0);
        return String.format(Locale.ROOT, "padding-right:%.3fem", em);
    }

    private int[] decimals() {
        int[] most = new int[columns.size()];
        for (List<Cell> row : rows) {
            for (int i = 0; i < most.length; i++) {
                if (columns.get(i).figures() && row.get(i) instanceof Cell.Words words) {
                    most[i] = Math.max(most[i], Figures.decimalsOf(words.text()));
                }
            }
        }
        return most;
    }
}
