// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.imports;

import io.quarkus.qute.TemplateData;
import isohume.device.export.LoggedTable;
import isohume.device.export.Understanding;
import isohume.device.export.Understanding.Understood;
import isohume.station.imported.Imported;
import isohume.station.imported.Told;
import isohume.station.web.Clockface;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What came of reading a received file, as it is shown.
 *
 * @param given answers so far, to be sent along with the next ones
 * @param preview the first rows
 * @param others imported files that may be the reference
 */
@TemplateData
public record ImportView(
        String hash, String name, String query, List<Answer> given, Told told, List<Row> preview, List<Other> others) {
    private static final int PREVIEW = 8;

    /** An answer that was given. */
    @TemplateData
    public record Answer(String key, String value) {}

    /** A row of the file. */
    @TemplateData
    public record Row(long line, String at, List<String> cells) {}

    /** An imported file. */
    @TemplateData
    public record Other(String hash, String name, String when) {
        static Other of(Imported imported, Clockface clock) {
            return new Other(imported.sha256(), imported.name(), clock.full(imported.first()));
        }
    }

    static ImportView of(String hash, Given given, Understanding read, List<Imported> imported, Clockface clock) {
        List<Answer> answers = new ArrayList<>();
        for (Map.Entry<String, String> one : given.answers().entrySet()) {
            answers.add(new Answer(one.getKey(), one.getValue()));
        }
        return new ImportView(
                hash,
                given.name(),
                given.query(),
                answers,
                Told.of(given.name(), read),
                read instanceof Understood understood ? preview(understood.table(), clock) : List.of(),
                imported.stream()
                        .filter(i -> !i.sha256().equals(hash))
                        .map(i -> Other.of(i, clock))
                        .distinct()
                        .toList());
    }

    private static List<Row> preview(LoggedTable table, Clockface clock) {
        List<Row> rows = new ArrayList<>();
        for (int row = 0; row < Math.min(PREVIEW, table.size()); row++) {
            List<String> cells = new ArrayList<>();
            for (int column = 0; column < table.columns().size(); column++) {
                cells.add(
                        table.shown(row, column).map(BigDecimal::toPlainString).orElse("–"));
            }
            rows.add(new Row(table.line(row), clock.full(table.at(row)), cells));
        }
        return rows;
    }

    public boolean understood() {
        return told.outcome().equals("understood");
    }

    public boolean inDoubt() {
        return told.outcome().equals("in_doubt");
    }

    public boolean refused() {
        return told.outcome().equals("refused");
    }
}
