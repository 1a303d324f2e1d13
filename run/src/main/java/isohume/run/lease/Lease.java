// SPDX-License-Identifier: Apache-2.0
package isohume.run.lease;

import isohume.journal.Journal;
import isohume.journal.JournalLost;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.InstantSource;
import org.jspecify.annotations.Nullable;

/**
 * The right to command one chamber, by its address. Twofold: a lock of the operating system, which keeps every other
 * program of this machine off and ends with the program, however it ends; and a fact with an expiry in the journal, which
 * keeps other machines off that use the same journal. Machines that share neither cannot know of each other before they
 * have touched the chamber; a run notices that from its target ({@link isohume.run.watch.Fault#TARGET_LOST}).
 *
 * <p>Safe for any thread.
 */
public final class Lease implements AutoCloseable {
    /** For how long a lease is taken; renew it well before. */
    public static final Duration TERM = Duration.ofMinutes(10);

    private final Records records;
    private final Lock lock;
    private boolean closed;

    private record Lock(FileChannel channel, FileLock held) {}

    private Lease(Records records, Lock lock) {
        this.records = records;
        this.lock = lock;
    }

    /**
     * Takes the lease.
     *
     * @param chamber the chamber's address, the same for everybody who reaches it: {@code 192.0.2.7:502 unit 1}
     * @param locks a folder of this machine that every program on it uses; made if it is not there
     * @throws LeaseRefused when another has it
     * @throws isohume.journal.JournalLost when it cannot be written down
     * @throws UncheckedIOException when the folder cannot be used
     */
    public static Lease take(Journal journal, String chamber, Holder holder, Path locks, InstantSource clock) {
        // the journal first: to open a lock's file a second time would drop the lock that this program has on it
        // (POSIX)
        Records records = new Records(journal, chamber, holder, clock);
        records.requireFree();
        Lease lease = new Lease(records, lock(chamber, holder, locks, clock));
        try {
            records.take();
            return lease;
        } catch (RuntimeException refused) {
            lease.unlock();
            throw refused;
        }
    }

    static String key(String chamber) {
        String key = chamber.replaceAll("[^A-Za-z0-9.-]", "_");
        return key.substring(0, Math.min(80, key.length()));
    }

    private static Lock lock(String chamber, Holder holder, Path locks, InstantSource clock) {
        try {
            makeFolder(locks);
            Path file = locks.resolve(key(chamber) + ".lock");
            FileChannel channel = FileChannel.open(
                    file,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.READ,
                    StandardOpenOption.WRITE,
                    LinkOption.NOFOLLOW_LINKS); // the folder may be anybody's
            openToAll(file);
            FileLock held = tryLock(channel);
            if (held == null) {
                String who = read(channel);
                channel.close();
                throw new LeaseRefused("The chamber " + chamber + " is in use: " + who
                        + ". Close that program first, or give this one another bench.");
            }
            channel.truncate(0);
            write(channel, holder.words() + ", since " + clock.instant());
            return new Lock(channel, held);
        } catch (IOException unusable) {
            throw new UncheckedIOException("the folder " + locks + " for locks of chambers cannot be used", unusable);
        }
    }

    private static void makeFolder(Path locks) throws IOException {
        if (Files.isDirectory(locks)) {
            return;
        }
        Files.createDirectories(locks);
        try {
            var ignored = Files.setPosixFilePermissions(locks, PosixFilePermissions.fromString("rwxrwxrwx"));
        } catch (UnsupportedOperationException elsewhere) {
            // no such permissions here
        }
    }

    /** Other users' programs need the same locks. */
    private static void openToAll(Path file) {
        try {
            var ignored = Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-rw-"));
        } catch (IOException | UnsupportedOperationException anothersOrElsewhere) {
            // whoever made it has done so, or there are no such permissions here
        }
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock(Long.MAX_VALUE - 1, 1, false); // a byte beyond the text, so that others may read it
        } catch (OverlappingFileLockException thisProgram) {
            return null;
        }
    }

    private static String read(FileChannel channel) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(500);
        int count = channel.read(bytes, 0);
        return count <= 0
                ? "by a program that is just starting"
                : new String(bytes.array(), 0, count, StandardCharsets.UTF_8);
    }

    private static void write(FileChannel channel, String text) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
            int ignored = channel.write(bytes);
        }
    }

    /** To be called now and then; writes only when half of the term is gone. */
    public synchronized void renew() {
        if (!closed) {
            records.renew();
        }
    }

    /** Gives it back. Idempotent. */
    @Override
    public synchronized void close() {
        if (!closed) {
            closed = true;
            try {
                records.release();
            } catch (JournalLost lost) {
                // it ends by itself
            } finally {
                unlock();
            }
        }
    }

    private void unlock() {
        try {
            lock.held().release();
            lock.channel().close();
        } catch (IOException alreadyGone) {
            // the lock ends with the file either way
        }
    }
}
