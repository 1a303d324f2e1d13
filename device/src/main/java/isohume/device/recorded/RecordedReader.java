// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** One pass over a file, row by row; keeps the numbers, never the text. */
final class RecordedReader {
    private static final long MOST_CELLS = 10_000_000;
    private static final int MOST_CHARACTERS_PER_ROW = 1 << 20;

    private final String name;
    private final Faults faults;
    private long line = 1;
    private long cells;

    RecordedReader(String name) {
        this.name = name;
        this.faults = new Faults(name);
    }

    static RecordedReadings read(Path file, String name, long limitBytes) {
        RecordedReader reader = new RecordedReader(name);
        TextFile.check(file, limitBytes, reader.faults);
        try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return reader.read(text);
        } catch (IOException e) {
            throw TextFile.unreadable(e, reader.faults);
        }
    }

    RecordedReadings read(Reader text) {
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .maxBufferSize(MOST_CHARACTERS_PER_ROW)
                .ofCsvRecord(text)) {
            return read(csv);
        } catch (CsvParseException | UncheckedIOException e) {
            throw faults.last(
                    line,
                    "the line after this one is not well-formed CSV (" + e.getMessage() + ")",
                    "look for quotation marks that are not closed");
        } catch (IOException e) {
            throw TextFile.unreadable(e, faults);
        }
    }

    private RecordedReadings read(CsvReader<CsvRecord> csv) {
        Table table = null;
        RowReader row = null;
        for (CsvRecord record : csv) {
            line = record.getStartingLineNumber();
            if (table == null || row == null) {
                List<Column> columns = Header.columns(withoutMark(record.getFields()), line, faults);
                table = new Table(columns);
                row = new RowReader(columns, table, faults);
            } else {
                countCells(record.getFieldCount());
                row.read(record.getFields(), line);
            }
        }
        if (table == null) {
            throw faults.last(
                    0, "the file is empty", "a line of headings and at least one line of readings are needed");
        }
        faults.refuseIfAny();
        if (table.isEmpty()) {
            throw faults.last(0, "there are headings, but no readings", "add at least one line of readings");
        }
        return new RecordedReadings(name, table.channels(), table);
    }

    private void countCells(int some) {
        cells += some;
        if (cells > MOST_CELLS) {
            throw faults.last(
                    line, "the file has more than " + MOST_CELLS + " cells", "split it between two points of the plan");
        }
    }

    /** Some programs put an invisible mark in front of a text in UTF-8. */
    private static List<String> withoutMark(List<String> headings) {
        if (!headings.getFirst().startsWith("\uFEFF")) {
            return headings;
        }
        List<String> plain = new ArrayList<>(headings);
        plain.set(0, headings.getFirst().substring(1));
        return plain;
    }
}
