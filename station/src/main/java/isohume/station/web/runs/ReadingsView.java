// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import isohume.quantity.Phase;
import isohume.result.Recording;
import isohume.station.web.Clockface;
import isohume.station.web.Figure;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The paired readings of one point as they were shown, references not corrected.
 *
 * @param columns first the references, then the instruments
 */
public record ReadingsView(
        String run, int point, String at, boolean frost, String depositBy, List<Column> columns, List<Row> rows) {

    /** A column's head: what it is and its unit; {@code key} names a reference, or is empty for an instrument. */
    public record Column(String key, String instrument, String quantity, String unit) {}

    /** One moment; cells in the order of the columns. */
    public record Row(int number, String at, List<Figure> cells) {}

    static ReadingsView of(String run, Recording recording, Clockface clock) {
        List<Column> columns = new ArrayList<>(List.of(
                new Column("dew_point", "", "", "°C"),
                new Column("temperature", "", "", "°C"),
                new Column("pressure", "", "", "Pa"),
                new Column("mirror_pressure", "", "", "Pa")));
        List<List<Figure>> cells = new ArrayList<>();
        cells.add(column(recording, Recording.Row::dewPoint));
        cells.add(column(recording, Recording.Row::temperature));
        cells.add(column(recording, Recording.Row::pressure));
        cells.add(column(recording, Recording.Row::mirrorPressure));
        for (String key : instruments(recording)) {
            int slash = key.lastIndexOf('/');
            columns.add(new Column("", key.substring(0, slash), key.substring(slash + 1), unit(key)));
            cells.add(column(recording, row -> row.shown().getOrDefault(key, Double.NaN)));
        }
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < recording.rows().size(); i++) {
            int row = i;
            rows.add(new Row(
                    i + 1,
                    clock.full(recording.rows().get(i).at()),
                    cells.stream().map(column -> column.get(row)).toList()));
        }
        return new ReadingsView(
                run,
                recording.point().number(),
                ResultRow.direction(recording.point()) + " " + ResultRow.at(recording.point()),
                recording.deposit() == Phase.ICE,
                recording.depositBy(),
                List.copyOf(columns),
                rows);
    }

    private static List<String> instruments(Recording recording) {
        return recording.rows().stream()
                .flatMap(row -> row.shown().keySet().stream())
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
    }

    private static String unit(String key) {
        return isohume.quantity.Quantity.ofKey(key.substring(key.lastIndexOf('/') + 1))
                .unit();
    }

    /** With as many decimals as the longest reading of the column has. */
    private static List<Figure> column(Recording recording, ToDoubleFunction<Recording.Row> of) {
        int decimals = recording.rows().stream()
                .mapToDouble(of)
                .filter(Double::isFinite)
                .mapToInt(v ->
                        Math.max(0, BigDecimal.valueOf(v).stripTrailingZeros().scale()))
                .max()
                .orElse(0);
        return recording.rows().stream()
                .map(row -> Figure.of(of.applyAsDouble(row), decimals))
                .toList();
    }
}
