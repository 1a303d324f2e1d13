// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.result.PointResult;
import isohume.result.Results;
import isohume.uncertainty.Rounded;
import isohume.uncertainty.conformity.Verdict;
import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Results as a short table of plain text. Values are rounded with their U, as on a certificate. */
final class ResultTable {
    private ResultTable() {}

    static void write(Results results, PrintWriter to) {
        TextTable table = new TextTable(List.of(
                "instrument",
                "quantity",
                ">point",
                ">set °C",
                ">set % RH",
                "direction",
                ">error",
                ">U",
                "unit",
                "verdict"));
        results.job()
                .items()
                .forEach(item -> results.of(item.id()).stream()
                        .sorted(Comparator.comparing(PointResult::quantity))
                        .forEach(point -> table.row(cells(point))));
        table.write(to);
    }

    private static List<String> cells(PointResult point) {
        Rounded rounded = Rounded.of(point.error(), point.expanded());
        return List.of(
                point.instrument(),
                point.quantity().key(),
                String.valueOf(point.point().number()),
                String.format(Locale.ROOT, "%.1f", point.point().temperature().celsius()),
                String.format(Locale.ROOT, "%.1f", point.point().humidity().percent()),
                point.point().direction().key(),
                rounded.value().toPlainString(),
                rounded.uncertainty().toPlainString(),
                point.quantity().differenceUnit(),
                point.verdict().map(Verdict::words).orElse("none asked for"));
    }
}
