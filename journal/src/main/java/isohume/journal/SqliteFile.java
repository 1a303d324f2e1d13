// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteOpenMode;

/**
 * A journal's file and the ways of connecting to it. Everything that only SQLite does is here.
 *
 * <p>A journal's file is never opened but through SQLite, not even to look at its first bytes: when a program closes a
 * file, POSIX drops all locks it has on it, and SQLite's with them (sqlite.org/howtocorrupt.html, section 2.2).
 */
final class SqliteFile {
    /** SQLite's application id of a journal: the bytes {@code ISOH}. */
    static final int APPLICATION = 0x49534F48;

    private final Path file;
    private final Duration patience;

    SqliteFile(Path file, Duration patience) {
        this.file = file;
        this.patience = patience;
    }

    Path path() {
        return file;
    }

    Duration patience() {
        return patience;
    }

    /** Makes an empty journal, whole or not at all, and never in the place of a file that is there. */
    void create() throws SQLException, IOException {
        Path beside = Files.createTempFile(folder(), file.getFileName().toString(), ".new");
        try {
            SqliteFile draft = new SqliteFile(beside, patience);
            draft.connect(draft.walled(), "", connection -> {
                        set(connection, "application_id = " + APPLICATION);
                        begin(connection);
                        Schema.bring(connection, 0);
                        commit(connection);
                    })
                    .close();
            draft.publishAs(file);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** Gives this finished file its name; the caller removes the name it had. Nobody may have it open. */
    void publishAs(Path name) throws IOException {
        try (FileChannel written = FileChannel.open(file, StandardOpenOption.WRITE)) {
            written.force(true);
        }
        try {
            Files.createLink(name, file); // fails when the name is taken, also by another program just now
        } catch (FileAlreadyExistsException taken) {
            throw taken;
        } catch (UnsupportedOperationException | IOException withoutLinks) { // a memory stick
            Files.move(file, name);
        }
        if (name.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel folder = FileChannel.open(folder(), StandardOpenOption.READ)) {
                folder.force(true); // the name itself survives a power cut
            }
        }
    }

    Path folder() {
        return Objects.requireNonNull(file.toAbsolutePath().getParent(), "a file has a folder");
    }

    /** For appending: write-ahead log, each commit forced to the disk. */
    Connection writer(String... limits) throws SQLException {
        return connect(walled(), "", connection -> {
            set(connection, "fullfsync = ON", "checkpoint_fullfsync = ON"); // macOS: past the disk's own cache too
            set(connection, limits);
            begin(connection);
            Schema.bring(connection, Schema.number(connection));
            commit(connection);
        });
    }

    /** For reading beside the writer. */
    Connection reader() throws SQLException {
        return connect(existing(), "", connection -> {
            set(connection, "query_only = ON");
            Schema.number(connection); // by reading once it keeps the write-ahead log in place
        });
    }

    /** For looking at any file without changing it. */
    Connection readOnly() throws SQLException {
        return readOnly("");
    }

    /**
     * As {@link #readOnly}, without locks and without any file beside it: also on a medium that cannot be written.
     * Right only while the file is at rest.
     */
    Connection readOnlyAtRest() throws SQLException {
        return readOnly("?immutable=1");
    }

    private Connection readOnly(String query) throws SQLException {
        SQLiteConfig config = existing();
        config.setReadOnly(true);
        return connect(config, query, connection -> {});
    }

    private SQLiteConfig walled() {
        SQLiteConfig config = existing();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        return config;
    }

    private SQLiteConfig existing() {
        SQLiteConfig config = new SQLiteConfig();
        config.resetOpenMode(SQLiteOpenMode.CREATE); // a journal that has gone is not begun anew in silence
        config.setBusyTimeout(Math.toIntExact(patience.toMillis()));
        return config;
    }

    private interface Setup {
        void of(Connection connection) throws SQLException;
    }

    private Connection connect(SQLiteConfig config, String query, Setup setup) throws SQLException {
        Connection connection = config.createConnection("jdbc:sqlite:" + file.toUri() + query);
        try {
            setup.of(connection);
            return connection;
        } catch (SQLException e) {
            connection.close(); // else its locks would stay until the program ends
            throw e;
        }
    }

    static void set(Connection connection, String... pragmas) throws SQLException {
        for (String pragma : pragmas) {
            run(connection, "PRAGMA " + pragma);
        }
    }

    /**
     * Takes the write lock, waiting for it within the patience. Transactions are begun and ended in plain SQL: the
     * driver's own way (auto-commit off) would take the lock again right after each commit and keep it.
     */
    static void begin(Connection connection) throws SQLException {
        run(connection, "BEGIN IMMEDIATE");
    }

    /** What is read from here on is of one moment. Locks nobody out. */
    static void beginReading(Connection connection) throws SQLException {
        run(connection, "BEGIN DEFERRED");
    }

    static void commit(Connection connection) throws SQLException {
        run(connection, "COMMIT");
    }

    private static void run(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    static int application(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("PRAGMA application_id")) {
            return row.next() ? row.getInt(1) : 0;
        }
    }

    /** Whether the file can be a journal of this program or an older one; nothing is changed by asking. */
    void require() throws SQLException, IOException {
        if (Files.size(file) == 0) {
            throw refused(
                    "is empty; a journal never is, so its content was lost",
                    "Put back a backup, or remove the" + " file to begin a new journal.");
        }
        try (Connection connection = readOnly()) {
            if (application(connection) != APPLICATION) {
                throw refused("is a database of another program", "Choose another file.");
            }
            int number = Schema.number(connection);
            if (number > Schema.NEWEST) {
                throw refused(
                        "has schema " + number + " of a newer program, this one knows up to " + Schema.NEWEST,
                        "Use the newer program.");
            }
        }
    }

    private JournalLost refused(String why, String remedy) {
        return new JournalLost("The file " + file + " " + why + ". Nothing was changed. " + remedy);
    }

    /** What can be seen from outside of a file that may be in use; the log holds what is not in the file yet. */
    record Sight(long size, FileTime changed, long logged) {
        boolean atRest() {
            return logged == 0;
        }
    }

    Sight sight() throws IOException {
        boolean there = Files.exists(file);
        return new Sight(
                there ? Files.size(file) : -1,
                there ? Files.getLastModifiedTime(file) : FileTime.fromMillis(0),
                Files.exists(log()) ? Files.size(log()) : 0);
    }

    private Path log() {
        return Path.of(file + "-wal");
    }

    /** Which files the names stand for now: the database and its write-ahead log; null keys where there are none. */
    record Identity(@Nullable Object database, @Nullable Object log) {}

    Identity identity() throws IOException {
        return new Identity(key(file), key(log()));
    }

    private static @Nullable Object key(Path path) throws IOException {
        BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
        return attributes.fileKey();
    }
}
