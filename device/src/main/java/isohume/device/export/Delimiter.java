// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.List;

/** What stands between two cells of a line. */
public enum Delimiter {
    SEMICOLON(';'),
    TAB('\t'),
    COMMA(','),
    BAR('|'),
    /** Columns stand below each other: two blanks or more, or a tab. */
    BLANKS('\t', 2),
    /** One blank or more. */
    BLANK('\t', 1);

    private final char character;
    private final int blanks;

    Delimiter(char character) {
        this(character, 0);
    }

    Delimiter(char character, int blanks) {
        this.character = character;
        this.blanks = blanks;
    }

    /** Whether an empty cell leaves no trace, so that a row with fewer cells may miss any of them. */
    boolean hidesEmptyCells() {
        return blanks > 0;
    }

    /** The cells of one line; the line as one cell where its quotation marks do not pair. */
    List<String> cells(String line) {
        if (line.isEmpty()) {
            return List.of();
        }
        try (CsvReader<CsvRecord> csv = rows(new StringReader(line))) {
            return csv.stream().findFirst().map(CsvRecord::getFields).orElse(List.of());
        } catch (CsvParseException | IOException unpaired) {
            return List.of(line);
        }
    }

    /** The rows of a text. */
    CsvReader<CsvRecord> rows(Reader text) {
        return builder().ofCsvRecord(hidesEmptyCells() ? new BlanksReader(text, blanks) : text);
    }

    private CsvReader.CsvReaderBuilder builder() {
        return CsvReader.builder()
                .fieldSeparator(character)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .maxBufferSize(1 << 20);
    }
}
