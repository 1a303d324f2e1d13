// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;

/** Copies a journal while it is being written. */
final class Backup {
    private final SqliteFile source;

    Backup(SqliteFile source) {
        this.source = source;
    }

    Verification to(Path target) throws IOException {
        Path whole = target.toAbsolutePath();
        if (Files.exists(whole)) {
            throw new FileAlreadyExistsException(
                    target.toString(), null, "a backup never replaces a file; choose another name");
        }
        Path beside = Files.createTempFile(
                new SqliteFile(whole, source.patience()).folder(),
                whole.getFileName().toString(),
                ".half");
        try {
            copy(beside);
            Verification found = Verification.of(beside);
            new SqliteFile(beside, source.patience()).publishAs(whole);
            return found;
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private void copy(Path beside) throws IOException {
        try (Connection connection = source.readOnly();
                PreparedStatement vacuum = connection.prepareStatement("VACUUM INTO ?")) {
            vacuum.setString(1, beside.toUri().toString());
            vacuum.execute();
        } catch (SQLException e) {
            throw new IOException(
                    "the backup of " + source.path() + " to " + beside + " was given up (" + e.getMessage()
                            + "); the journal itself is as it was; look for room on the backup's disk",
                    e);
        }
    }
}
