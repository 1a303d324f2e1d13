// SPDX-License-Identifier: Apache-2.0
package isohume.station.elsewhere;

import isohume.journal.SqliteJournal;
import isohume.station.imported.Aligned;
import isohume.station.imported.ImportedFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;

/** What persons confirmed of the clocks of files, as a data folder keeps it. */
public final class ConfirmedClocks {
    private ConfirmedClocks() {}

    /**
     * The latest confirmation for each instrument whose file was laid over this very reference's file; nothing for the
     * others. A file is known by its bytes, whatever it is called.
     *
     * @param instruments files by instrument, each {@code FILE} or {@code FILE:PROFILE}; so is the reference's
     * @throws IllegalArgumentException if the folder has no journal
     */
    public static Map<String, Aligned> of(Path data, String reference, Map<String, String> instruments)
            throws IOException {
        Path file = data.resolve("journal.db");
        if (!Files.exists(file)) {
            throw new IllegalArgumentException(
                    data + " has no journal; name the data folder in which the files were imported");
        }
        Map<String, Aligned> confirmed = new LinkedHashMap<>();
        try (SqliteJournal journal = SqliteJournal.open(file, InstantSource.system())) {
            ImportedFiles imported = new ImportedFiles(data, journal);
            String laidOver = ImportedFiles.hash(RecordedFile.path(reference));
            for (Map.Entry<String, String> one : instruments.entrySet()) {
                imported.alignments(ImportedFiles.hash(RecordedFile.path(one.getValue()))).stream()
                        .filter(aligned -> aligned.reference().equals(laidOver))
                        .forEach(aligned -> confirmed.put(one.getKey(), aligned));
            }
        }
        return confirmed;
    }
}
