// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * A journal in one SQLite file, on a local disk. Several programs may have the same file open.
 *
 * <p>The head of a stream is read from the file within the transaction that appends to it: there is no second truth in
 * memory that could differ after a failure.
 */
public final class SqliteJournal implements Journal {
    /** How long an append or a read waits for another program before it gives up. */
    public static final Duration PATIENCE = Duration.ofSeconds(5);

    private final SqliteFile file;
    private final InstantSource clock;
    private final String[] limits;
    private final ReentrantLock writing = new ReentrantLock();
    private final ReentrantLock reading = new ReentrantLock();
    private final SqliteFile.Identity identity;
    private final Connection reader;
    private @Nullable Connection writer; // none after a failed append: the next one connects afresh
    private volatile boolean closed;

    private SqliteJournal(SqliteFile file, InstantSource clock, String... limits) throws SQLException, IOException {
        this.file = file;
        this.clock = clock;
        this.limits = limits;
        this.writer = file.writer(limits);
        try {
            this.reader = file.reader();
            this.identity = file.identity();
        } catch (SQLException | IOException e) {
            dropWriter();
            throw e;
        }
    }

    /**
     * Opens the journal kept in a file; a file that is not there is made, its folder is not.
     *
     * @throws JournalLost when the file cannot be opened, is empty, damaged, not a journal or of a newer program;
     *     nothing is changed then
     */
    public static SqliteJournal open(Path file, InstantSource clock) {
        return open(file, clock, PATIENCE);
    }

    static SqliteJournal open(Path file, InstantSource clock, Duration patience, String... limits) {
        try {
            if (!Files.exists(file)) {
                create(new SqliteFile(file.toAbsolutePath(), patience));
            }
            SqliteFile present = new SqliteFile(file.toRealPath(), patience);
            present.require();
            return new SqliteJournal(present, clock, limits);
        } catch (SQLException e) {
            throw Loss.whileReading(file, patience, e);
        } catch (IOException e) {
            throw new JournalLost(
                    "The journal " + file + " cannot be opened (" + e + "). Nothing was changed. Check"
                            + " that its folder is there and may be written.",
                    e);
        }
    }

    private static void create(SqliteFile file) throws SQLException, IOException {
        try {
            file.create();
        } catch (FileAlreadyExistsException begunElsewhere) {
            // Another program made it just now; that one is opened.
        }
    }

    @Override
    @CanIgnoreReturnValue
    public Entry append(StreamName stream, Fact fact) {
        if (stream.kind().equals(Seal.STREAM.kind())) {
            throw new IllegalArgumentException("seals are set by the journal itself, not appended: " + stream);
        }
        return write(stream, fact);
    }

    @CanIgnoreReturnValue
    private Entry write(StreamName stream, Fact fact) {
        writing.lock();
        try {
            requireOpen();
            requireInPlace();
            Entry entry = committed(stream, fact);
            requireInPlace(); // SQLite itself writes on happily into a file that was removed
            return entry;
        } finally {
            writing.unlock();
        }
    }

    private Entry committed(StreamName stream, Fact fact) {
        boolean done = false;
        try {
            Connection connection = writer();
            SqliteFile.begin(connection);
            Tables.Head head = Tables.head(connection, stream);
            long now = Microseconds.of(clock.instant());
            Entry entry = Chain.entry(head.hash(), stream, head.number() + 1, now, fact);
            Tables.insert(connection, entry);
            SqliteFile.commit(connection);
            done = true;
            return entry;
        } catch (SQLException e) {
            throw Loss.whileWriting(file.path(), file.patience(), stream, e);
        } finally {
            if (!done) {
                dropWriter();
            }
        }
    }

    private Connection writer() throws SQLException {
        Connection present = writer;
        if (present == null) {
            present = file.writer(limits);
            writer = present;
        }
        return present;
    }

    /** Gives up the writer's connection; what it had not committed is undone by that. */
    private void dropWriter() {
        Connection broken = writer;
        writer = null;
        if (broken != null) {
            try {
                broken.close();
            } catch (SQLException alsoBroken) {
                // The failure before this one is already on its way to the caller and says more.
            }
        }
    }

    @Override
    public List<Entry> read(StreamName stream, long after, int most) {
        if (after < 0 || most < 0) {
            throw new IllegalArgumentException("after and most are 0 or more, were " + after + " and " + most);
        }
        return look(connection -> Tables.read(connection, stream, after, most));
    }

    @Override
    public long last(StreamName stream) {
        return look(connection -> Tables.head(connection, stream)).number();
    }

    @Override
    public List<StreamName> streams(String kind) {
        return look(connection -> Tables.streams(connection, kind));
    }

    private interface Look<T> {
        T at(Connection connection) throws SQLException;
    }

    private <T> T look(Look<T> look) {
        reading.lock();
        try {
            requireOpen();
            requireInPlace();
            return look.at(reader);
        } catch (SQLException e) {
            throw Loss.whileReading(file.path(), file.patience(), e);
        } catch (Tables.Altered e) {
            throw Loss.altered(file.path(), e.what(), e);
        } finally {
            reading.unlock();
        }
    }

    /**
     * Sets a seal over all streams as they are now.
     *
     * @return the new seal, or the last one when nothing was written since
     * @throws JournalLost as {@link #append}
     */
    @CanIgnoreReturnValue
    public Seal seal() {
        List<List<Tables.Head>> due = Seal.due(look(Tables::heads), this);
        due.forEach(heads -> write(Seal.STREAM, Seal.fact(heads)));
        return Seal.of(read(Seal.STREAM, last(Seal.STREAM) - 1, 1).getFirst());
    }

    /**
     * Copies the journal as it is now into one new file and verifies the copy; appends go on meanwhile. The copy gets
     * its name when it is finished and on disk, so that there is never half a backup under that name.
     *
     * @param target a file that is not there yet, in a folder that is
     * @return what verifying the copy found; a copy of a broken journal is kept all the same
     * @throws IOException when the target is taken or cannot be written, or the journal cannot be read to its end;
     *     there is no target then
     * @throws JournalLost when the journal's file has gone
     */
    public Verification backupTo(Path target) throws IOException {
        requireOpen();
        requireInPlace();
        return new Backup(file).to(target);
    }

    private void requireOpen() {
        if (closed) {
            throw new IllegalStateException("the journal " + file.path() + " is closed");
        }
    }

    private void requireInPlace() {
        try {
            if (!file.identity().equals(identity)) {
                throw Loss.gone(file.path(), "another file has been put in its place or in that of its -wal file");
            }
        } catch (IOException e) {
            throw Loss.gone(file.path(), "it or its -wal file is no longer there (" + e + ")");
        }
    }

    @Override
    public void close() {
        writing.lock();
        reading.lock();
        try {
            if (!closed) {
                closed = true;
                dropWriter();
                reader.close();
            }
        } catch (SQLException e) {
            throw new JournalLost(
                    "The journal " + file.path() + " could not be closed in order (" + e.getMessage()
                            + "). All acknowledged facts are on disk; leave the -wal file beside it.",
                    e);
        } finally {
            reading.unlock();
            writing.unlock();
        }
    }
}
