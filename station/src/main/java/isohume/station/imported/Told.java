// SPDX-License-Identifier: Apache-2.0
package isohume.station.imported;

import isohume.device.export.LoggedTable;
import isohume.device.export.Understanding;
import isohume.device.export.Understanding.InDoubt;
import isohume.device.export.Understanding.Refused;
import isohume.device.export.Understanding.Understood;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What came of reading a file, as programs and pages are told it.
 *
 * @param outcome {@code understood}, {@code in_doubt} or {@code refused}
 * @param intervalSeconds the commonest step; 0 where the file is not understood
 * @param timeStepSeconds the last digit of the times
 * @param profile the document by which it was read; empty where the file is not understood
 */
public record Told(
        String outcome,
        String file,
        int rows,
        String first,
        String last,
        double intervalSeconds,
        double timeStepSeconds,
        List<Column> columns,
        List<Found> findings,
        List<Asked> questions,
        List<Wrong> errors,
        String profile) {

    /** A column that is used, with the least and the greatest value in its file's unit and the gaps in it. */
    public record Column(
            int number, String heading, String channel, String unit, String least, String most, int gaps) {}

    /** Something found; line 0 is the file as a whole. */
    public record Found(String kind, long line, String text) {}

    /** A question, and for each choice the value that answers it. */
    public record Asked(String key, String text, List<Choice> choices, List<String> evidence, boolean free) {}

    public record Choice(String value, String meaning) {}

    /** A fault; line and column are 0 where the file or the line as a whole is meant. */
    public record Wrong(long line, int column, String what, String remedy) {}

    /** What came of reading a file of this name. */
    public static Told of(String file, Understanding read) {
        List<Found> findings = read.findings().stream()
                .map(f -> new Found(f.kind().name().toLowerCase(Locale.ROOT), f.line(), f.text()))
                .toList();
        return switch (read) {
            case Understood u -> understood(file, u, findings);
            case InDoubt d -> new Told("in_doubt", file, 0, "", "", 0, 0, List.of(), findings, asked(d), List.of(), "");
            case Refused r -> new Told("refused", file, 0, "", "", 0, 0, List.of(), findings, List.of(), wrong(r), "");
        };
    }

    private static List<Asked> asked(InDoubt doubt) {
        return doubt.questions().stream()
                .map(q -> new Asked(
                        q.key(),
                        q.text(),
                        q.choices().stream()
                                .map(c -> new Choice(c.value(), c.meaning()))
                                .toList(),
                        q.evidence(),
                        q.free()))
                .toList();
    }

    private static List<Wrong> wrong(Refused refused) {
        return refused.errors().stream()
                .map(e -> new Wrong(e.line(), e.column(), e.what(), e.remedy()))
                .toList();
    }

    private static Told understood(String file, Understood read, List<Found> findings) {
        LoggedTable table = read.table();
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            columns.add(column(table, i));
        }
        return new Told(
                "understood",
                file,
                table.size(),
                table.at(0).toString(),
                table.at(table.size() - 1).toString(),
                table.interval().toMillis() / 1000.0,
                table.timeStep().toMillis() / 1000.0,
                columns,
                findings,
                List.of(),
                List.of(),
                read.profile().document());
    }

    private static Column column(LoggedTable table, int place) {
        Optional<BigDecimal> least = Optional.empty();
        Optional<BigDecimal> most = Optional.empty();
        int gaps = 0;
        for (int row = 0; row < table.size(); row++) {
            Optional<BigDecimal> shown = table.shown(row, place);
            if (shown.isEmpty()) {
                gaps++;
            } else {
                least = Optional.of(least.map(shown.get()::min).orElse(shown.get()));
                most = Optional.of(most.map(shown.get()::max).orElse(shown.get()));
            }
        }
        var column = table.columns().get(place);
        return new Column(
                column.number(),
                column.heading(),
                column.channel(),
                column.unit().symbol(),
                written(least.map(column.unit()::fromQuantity)),
                written(most.map(column.unit()::fromQuantity)),
                gaps);
    }

    private static String written(Optional<BigDecimal> value) {
        return value.map(v -> v.round(new MathContext(9)).stripTrailingZeros().toPlainString())
                .orElse("");
    }
}
