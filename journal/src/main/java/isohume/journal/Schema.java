// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** The tables, by number: {@code 0001.sql} makes an empty database a journal, each later file takes it one further. */
final class Schema {
    /** The newest schema this program knows. */
    static final int NEWEST = 1;

    private static final Pattern COMMENT = Pattern.compile("--[^\n]*");

    private Schema() {}

    /** The number kept in the database, 0 when there is none; the table is missing in anything that is not a journal. */
    @CanIgnoreReturnValue
    static int number(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT MAX(number) FROM schema_number")) {
            return row.next() ? row.getInt(1) : 0;
        }
    }

    /** Takes the tables from schema {@code from} (0: an empty database) to the newest; the caller commits. */
    static void bring(Connection connection, int from) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (int number = from + 1; number <= NEWEST; number++) {
                for (String sql : script(number)) {
                    statement.execute(sql);
                }
            }
        }
    }

    private static List<String> script(int number) {
        String name = String.format(Locale.ROOT, "%04d.sql", number);
        try (InputStream in = Schema.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new AssertionError(name + " is not packed with the program");
            }
            String all = COMMENT.matcher(new String(in.readAllBytes(), UTF_8)).replaceAll("");
            return Pattern.compile(";")
                    .splitAsStream(all)
                    .filter(sql -> !sql.isBlank())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
