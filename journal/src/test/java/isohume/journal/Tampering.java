// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;

/** What someone with another program could do to a file. */
final class Tampering {
    private Tampering() {}

    static void with(Path file, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }

    static Path notAJournal(Path folder, String what) throws IOException, SQLException {
        Path file = folder.resolve("not-" + what);
        switch (what) {
            case "empty" -> Files.createFile(file);
            case "text" -> Files.writeString(file, "Dear laboratory, please find enclosed our probe.\n".repeat(200));
            case "database" -> with(file, "CREATE TABLE entry (number INTEGER)");
            case "folder" -> Files.createDirectory(file);
            case "newer" -> {
                SqliteJournal.open(file, () -> Instant.EPOCH).close();
                with(file, "UPDATE schema_number SET number = " + (Schema.NEWEST + 1));
            }
            default -> throw new IllegalArgumentException(what);
        }
        return file;
    }
}
