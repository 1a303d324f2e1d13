// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.Reader;
import java.util.List;

/** What stands between two cells of a line. */
public enum Delimiter {
    SEMICOLON(';'),
    TAB('\t'),
    COMMA(','),
    BAR('|');

    private final char character;

    Delimiter(char character) {
        this.character = character;
    }

    /** The cells of one line; the line as one cell where its quotation marks do not pair. */
    List<String> cells(String line) {
        if (line.isEmpty()) {
            return List.of();
        }
        try (CsvReader<CsvRecord> csv = builder().ofCsvRecord(line)) {
            return csv.stream().findFirst().map(CsvRecord::getFields).orElse(List.of());
        } catch (CsvParseException | IOException unpaired) {
            return List.of(line);
        }
    }

    /** The rows of a text. */
    CsvReader<CsvRecord> rows(Reader text) {
        return builder().ofCsvRecord(text);
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
