// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import isohume.journal.Verification.Broken;
import isohume.journal.Verification.Finding;
import isohume.journal.Verification.Whole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Goes once through a file, from the outside in: is it a journal, is it undamaged, are the chains and seals right. */
final class Verifier {
    private final Path file;
    private final List<Seal> noted;
    private final List<Finding> findings = new ArrayList<>();
    private long streams;
    private long facts;

    private Verifier(Path file, List<Seal> noted) {
        this.file = file;
        this.noted = noted;
    }

    static Verification verify(Path file, List<Seal> noted) {
        try {
            Path present = Files.exists(file) ? file.toRealPath() : file;
            SqliteFile sqlite = new SqliteFile(present, SqliteJournal.PATIENCE);
            SqliteFile.Sight before = sqlite.sight();
            if (before.atRest()) {
                Verification found = new Verifier(present, noted).verify(sqlite::readOnlyAtRest);
                if (before.equals(sqlite.sight())) {
                    return found;
                }
            }
            return new Verifier(present, noted).verify(sqlite::readOnly);
        } catch (SQLException e) {
            throw Loss.whileReading(file, SqliteJournal.PATIENCE, e);
        } catch (IOException e) {
            throw new JournalLost("The journal " + file + " cannot be read (" + e + "). Nothing was changed.", e);
        }
    }

    private interface Opening {
        Connection open() throws SQLException;
    }

    private Verification verify(Opening opening) throws SQLException, IOException {
        SealCheck seals = new SealCheck(noted, this::find);
        if (mayBeJournal()) {
            try (Connection connection = opening.open()) {
                SqliteFile.beginReading(connection);
                check(connection, seals);
            } catch (SQLException e) {
                if (Loss.isNoAccess(e)) {
                    throw e;
                }
                find(
                        "",
                        0,
                        Loss.isNoDatabase(e)
                                ? "the file is not a journal: it is not even an SQLite 3 database"
                                : "the file is damaged: it cannot be read to its end (" + e.getMessage() + ")");
            }
        }
        return findings.isEmpty() ? new Whole(streams, facts, seals.sealed(), seals.last()) : new Broken(findings);
    }

    private boolean mayBeJournal() throws IOException {
        if (!Files.isRegularFile(file)) {
            find("", 0, "there is no file " + file);
        } else if (Files.size(file) == 0) {
            find("", 0, "the file is empty; a journal never is, so its content was lost");
        }
        return findings.isEmpty();
    }

    private void check(Connection connection, SealCheck seals) throws SQLException {
        if (SqliteFile.application(connection) != SqliteFile.APPLICATION) {
            find("", 0, "the file is not a journal: it is a database of another program");
            return;
        }
        int schema = Schema.number(connection);
        if (schema < 1 || schema > Schema.NEWEST) {
            find(
                    "",
                    0,
                    "the file has schema " + schema + ", this program knows 1 to " + Schema.NEWEST
                            + "; use a newer one");
            return;
        }
        checkPages(connection);
        checkChains(connection);
        checkStrays(connection);
        seals.check(connection);
    }

    private void checkPages(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("PRAGMA integrity_check(20)")) {
            while (rows.next()) {
                if (!"ok".equals(rows.getString(1))) {
                    find("", 0, "the file is damaged: " + rows.getString(1));
                }
            }
        }
    }

    private void checkChains(Connection connection) throws SQLException {
        @Nullable ChainCheck chain = null;
        try (PreparedStatement select = connection.prepareStatement(
                        "SELECT s.place, s.kind, s.id, e.number, e.at, e.form, e.text, e.hash"
                                + " FROM stream s LEFT JOIN entry e ON e.stream = s.place ORDER BY s.place, e.number");
                ResultSet rows = select.executeQuery()) {
            while (rows.next()) {
                if (chain == null || chain.place() != rows.getLong(1)) {
                    end(chain);
                    chain = begin(rows);
                }
                chain.next(rows);
            }
        }
        end(chain);
    }

    private ChainCheck begin(ResultSet rows) throws SQLException {
        streams++;
        long place = rows.getLong(1);
        String stream = rows.getString(2) + "/" + rows.getString(3);
        if (place != streams) {
            find(stream, 0, "a stream that began before this one was removed");
            streams = place;
        }
        return new ChainCheck(place, stream, this::find);
    }

    private void end(@Nullable ChainCheck chain) {
        facts += chain == null ? 0 : chain.facts();
    }

    private void checkStrays(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(
                        "SELECT COUNT(*) FROM entry WHERE stream NOT IN (SELECT place FROM stream)")) {
            if (row.next() && row.getLong(1) > 0) {
                find("", 0, row.getLong(1) + " entries belong to a stream whose name was removed");
            }
        }
    }

    private void find(String stream, long number, String what) {
        if (findings.size() < Verification.MOST_FINDINGS) {
            findings.add(new Finding(stream, number, what));
        } else if (findings.size() == Verification.MOST_FINDINGS) {
            findings.add(new Finding("", 0, "there are further findings, which are not listed"));
        }
    }

    /** Where findings go. */
    interface Findings {
        void find(String stream, long number, String what);
    }
}
