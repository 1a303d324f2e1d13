// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** The SQL that knows the tables. Portable; there is no statement here that changes or removes anything. */
final class Tables {
    /** The last entry of a stream; number 0 and {@link Chain#BEGINNING} when there is none. */
    record Head(StreamName stream, long number, String hash) {}

    private static final String HEADS = "SELECT s.kind, s.id, e.number, e.hash FROM stream s JOIN entry e"
            + " ON e.stream = s.place AND e.number = (SELECT MAX(number) FROM entry WHERE stream = s.place)";

    /** Something in the tables that no append wrote. */
    static final class Altered extends RuntimeException {
        private static final long serialVersionUID = 1;

        Altered(String what) {
            super(what);
        }

        String what() {
            return String.valueOf(getMessage());
        }
    }

    private Tables() {}

    static Head head(Connection connection, StreamName stream) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(HEADS + " WHERE s.kind = ? AND s.id = ?")) {
            select.setString(1, stream.kind());
            select.setString(2, stream.id());
            try (ResultSet row = select.executeQuery()) {
                return row.next() ? head(row) : new Head(stream, 0, Chain.BEGINNING);
            }
        }
    }

    /** The heads of all streams, in the order in which they began. */
    static List<Head> heads(Connection connection) throws SQLException {
        List<Head> heads = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(HEADS + " ORDER BY s.place");
                ResultSet rows = select.executeQuery()) {
            while (rows.next()) {
                heads.add(head(rows));
            }
        }
        return heads;
    }

    private static Head head(ResultSet row) throws SQLException {
        return new Head(name(row), row.getLong(3), row.getString(4));
    }

    private static StreamName name(ResultSet row) throws SQLException {
        try {
            return new StreamName(row.getString(1), row.getString(2));
        } catch (IllegalArgumentException e) {
            throw new Altered(String.valueOf(e.getMessage()));
        }
    }

    static List<StreamName> streams(Connection connection, String kind) throws SQLException {
        List<StreamName> names = new ArrayList<>();
        try (PreparedStatement select =
                connection.prepareStatement("SELECT kind, id FROM stream WHERE kind = ? ORDER BY place")) {
            select.setString(1, kind);
            try (ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    names.add(name(rows));
                }
            }
        }
        return names;
    }

    /** Puts an entry behind the head it was made for; the caller holds the write lock and commits. */
    static void insert(Connection connection, Entry entry) throws SQLException {
        if (entry.number() == 1) {
            begin(connection, entry.stream());
        }
        try (PreparedStatement insert = connection.prepareStatement("INSERT INTO entry"
                + " (stream, number, at, form, text, hash)"
                + " VALUES ((SELECT place FROM stream WHERE kind = ? AND id = ?), ?, ?, ?, ?, ?)")) {
            insert.setString(1, entry.stream().kind());
            insert.setString(2, entry.stream().id());
            insert.setLong(3, entry.number());
            insert.setLong(4, Microseconds.of(entry.at()));
            insert.setInt(5, entry.fact().form());
            insert.setString(6, entry.fact().text());
            insert.setString(7, entry.hash());
            insert.executeUpdate();
        }
    }

    private static void begin(Connection connection, StreamName stream) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(
                "INSERT INTO stream (place, kind, id)" + " SELECT COALESCE(MAX(place), 0) + 1, ?, ? FROM stream")) {
            insert.setString(1, stream.kind());
            insert.setString(2, stream.id());
            insert.executeUpdate();
        }
    }

    /**
     * Entries behind {@code after}, each checked against the one before it.
     *
     * @throws Altered naming the entry that is not what was acknowledged
     */
    static List<Entry> read(Connection connection, StreamName stream, long after, int most) throws SQLException {
        // From the entry before, whose hash the first one asked for is chained to.
        try (PreparedStatement select = connection.prepareStatement("SELECT e.number, e.at, e.form, e.text, e.hash"
                + " FROM entry e JOIN stream s ON s.place = e.stream"
                + " WHERE s.kind = ? AND s.id = ? AND e.number >= ? ORDER BY e.number LIMIT ?")) {
            select.setString(1, stream.kind());
            select.setString(2, stream.id());
            select.setLong(3, after);
            select.setLong(4, most + (after > 0 ? 1L : 0L));
            try (ResultSet rows = select.executeQuery()) {
                return checked(rows, stream, after);
            }
        }
    }

    private static List<Entry> checked(ResultSet rows, StreamName stream, long after) throws SQLException {
        List<Entry> entries = new ArrayList<>();
        String previous = Chain.BEGINNING;
        long number = Math.max(after, 1);
        for (; rows.next(); number++) {
            String kept = rows.getString(5);
            if (rows.getLong(1) != number) {
                throw new Altered("entry " + number + " of " + stream + " is missing");
            }
            if (number > after) {
                entries.add(checked(rows, previous, stream, number, kept));
            }
            previous = kept;
        }
        return entries;
    }

    private static Entry checked(ResultSet rows, String previous, StreamName stream, long number, String kept)
            throws SQLException {
        try {
            Fact fact = new Fact(Math.toIntExact(rows.getLong(3)), rows.getString(4));
            Entry entry = Chain.entry(previous, stream, number, rows.getLong(2), fact);
            if (entry.hash().equals(kept)) {
                return entry;
            }
        } catch (IllegalArgumentException | ArithmeticException notAFact) {
            // Said below: no append wrote this.
        }
        throw new Altered("entry " + number + " of " + stream + " is not what was acknowledged");
    }
}
