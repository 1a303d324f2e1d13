// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.List;

/** One pass over the rows of readings of a file. */
final class Rows {
    /** What is done with a row. */
    @FunctionalInterface
    interface Taker {
        /** Takes a row and its line; false ends the pass. */
        boolean take(List<String> cells, long line);
    }

    private final Path file;
    private final Charset charset;
    private final Delimiter delimiter;
    private final Doubts doubts;

    Rows(Path file, Charset charset, Delimiter delimiter, Doubts doubts) {
        this.file = file;
        this.charset = charset;
        this.delimiter = delimiter;
        this.doubts = doubts;
    }

    /** Passes over the rows from a line on, from 1. A fault of the text ends it and goes to the doubts. */
    void from(int first, Taker taker) throws IOException {
        long line = first;
        try (Lines lines = Lines.open(file, charset);
                CsvReader<CsvRecord> rows = delimiter.rows(lines.after(first - 1))) {
            for (CsvRecord row : rows) {
                line = first - 1 + row.getStartingLineNumber();
                if (!taker.take(row.getFields(), line)) {
                    return;
                }
            }
        } catch (CsvParseException unpaired) {
            doubts.wrong(line, 0, "the line after this one breaks off", "look for quotation marks that are not closed");
        } catch (UncheckedIOException | CharacterCodingException broken) {
            if (broken instanceof UncheckedIOException wrapped
                    && !(wrapped.getCause() instanceof CharacterCodingException)) {
                throw wrapped;
            }
            doubts.wrong(line, 0, "the text after this line is not " + charset, "give the file's encoding");
        }
    }
}
