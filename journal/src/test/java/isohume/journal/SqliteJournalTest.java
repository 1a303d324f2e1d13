// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

final class SqliteJournalTest extends JournalContract {
    private static final Path LOCKS = Path.of("/proc/locks"); // proc_locks(5)

    @TempDir
    Path folder = Path.of("");

    @Override
    Journal begin() {
        return SqliteJournal.open(folder.resolve("contract.journal"), this::now);
    }

    private SqliteJournal open(Path file) {
        return SqliteJournal.open(file, () -> NEW_YEAR, Duration.ofMillis(200));
    }

    private Path named(String name) {
        return folder.resolve(name);
    }

    @Test
    void a_journal_goes_on_where_it_was_closed() {
        Path file = named("ä b?c#d%e+f.journal");
        try (SqliteJournal journal = open(file)) {
            journal.append(RUN, fact(1));
        }
        try (SqliteJournal journal = open(file)) {
            assertEquals(2, journal.append(RUN, fact(2)).number());
        }
        assertWhole(2, file);
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(
                    List.of(),
                    left.filter(p -> p.toString().endsWith("-wal")
                                    || p.toString().endsWith(".new"))
                            .filter(p -> !p.toString().contains("contract"))
                            .toList());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void every_commit_is_forced_to_the_disk_before_it_is_acknowledged() throws SQLException {
        Path file = named("forced.journal");
        open(file).close();
        try (Connection writer = new SqliteFile(file, SqliteJournal.PATIENCE).writer();
                Statement statement = writer.createStatement()) {
            // 2 is FULL: https://www.sqlite.org/pragma.html#pragma_synchronous
            assertEquals(2, statement.executeQuery("PRAGMA synchronous").getInt(1));
            assertEquals("wal", statement.executeQuery("PRAGMA journal_mode").getString(1));
        }
    }

    @TestFactory
    Stream<DynamicTest> wherever_the_disk_is_full_what_was_acknowledged_is_whole_and_the_journal_goes_on_later() {
        return IntStream.rangeClosed(8, 40)
                .mapToObj(pages -> DynamicTest.dynamicTest(pages + " pages", () -> {
                    Path file = named(pages + ".journal");
                    int kept = appendUntilLost(file, pages);
                    assertWhole(kept, file);
                    try (SqliteJournal journal = open(file)) {
                        assertEquals(kept, journal.last(RUN));
                        assertEquals(kept + 1, journal.append(RUN, fact(kept)).number());
                    }
                    assertWhole(kept + 1, file);
                }));
    }

    private int appendUntilLost(Path file, int pages) {
        int kept = 0;
        // max_page_count: https://www.sqlite.org/pragma.html#pragma_max_page_count
        try (SqliteJournal journal =
                SqliteJournal.open(file, () -> NEW_YEAR, Duration.ofMillis(200), "max_page_count = " + pages)) {
            JournalLost lost = null;
            while (lost == null) {
                try {
                    journal.append(RUN, new Fact(1, "{\"t\":\"" + "x".repeat(97 * kept % 6_000) + "\"}"));
                    kept++;
                } catch (JournalLost full) {
                    lost = full;
                }
            }
            assertTrue(String.valueOf(lost.getMessage()).contains("disk is full"), lost.getMessage());
            assertEquals(kept, journal.last(RUN));
            assertThrows(
                    JournalLost.class,
                    () -> journal.append(RUN, new Fact(1, "{\"t\":\"" + "x".repeat(200_000) + "\"}")));
            assertEquals(kept, journal.read(RUN, 0, Integer.MAX_VALUE).size());
        }
        return kept;
    }

    @Test
    void two_programs_may_append_to_the_same_stream() {
        Path file = named("two.journal");
        try (SqliteJournal one = open(file);
                SqliteJournal two = open(file)) {
            for (int k = 1; k <= 20; k++) {
                SqliteJournal writer = k % 3 == 0 ? one : two;
                assertEquals(k, writer.append(RUN, fact(k)).number());
            }
            assertEquals(one.read(RUN, 0, 100), two.read(RUN, 0, 100));
            assertWhole(20, file);
        }
    }

    @Test
    void another_program_that_holds_the_file_too_long_loses_the_fact_and_only_that() throws SQLException {
        Path file = named("held.journal");
        try (SqliteJournal journal = open(file)) {
            journal.append(RUN, fact(1));
            try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
                    Statement statement = other.createStatement()) {
                statement.execute("BEGIN IMMEDIATE");
                JournalLost lost = assertThrows(JournalLost.class, () -> journal.append(RUN, fact(2)));
                assertTrue(String.valueOf(lost.getMessage()).contains("Another program has held"), lost.getMessage());
                assertEquals(1, journal.last(RUN)); // reading is not held up
                statement.execute("ROLLBACK");
            }
            assertEquals(2, journal.append(RUN, fact(2)).number());
        }
        assertWhole(2, file);
    }

    @Test
    void a_file_that_was_removed_is_noticed_at_the_next_append() throws IOException {
        Path file = named("removed.journal");
        try (SqliteJournal journal = open(file)) {
            journal.append(RUN, fact(1));
            Files.delete(file);
            assertThrows(JournalLost.class, () -> journal.append(RUN, fact(2)));
            assertThrows(JournalLost.class, () -> journal.append(RUN, fact(2)));
            assertThrows(JournalLost.class, () -> journal.read(RUN, 0, 1));
        }
        assertFalse(Files.exists(file));
    }

    @Test
    void a_write_ahead_log_that_was_removed_is_noticed_at_the_next_append() throws IOException {
        Path file = named("logless.journal");
        try (SqliteJournal journal = open(file)) {
            journal.append(RUN, fact(1));
            Files.delete(named("logless.journal-wal"));
            assertThrows(JournalLost.class, () -> journal.append(RUN, fact(2)));
        }
    }

    @Test
    void a_file_put_in_the_place_of_the_journal_is_not_written_to() throws IOException {
        Path file = named("replaced.journal");
        try (SqliteJournal journal = open(file)) {
            journal.append(RUN, fact(1));
            open(named("another.journal")).close();
            Files.move(named("another.journal"), file, StandardCopyOption.REPLACE_EXISTING);
            assertThrows(JournalLost.class, () -> journal.append(RUN, fact(2)));
        }
    }

    /** Without them an older SQLite in another program takes the journal for abandoned, and its log away. */
    @TestFactory
    Stream<DynamicTest> looking_at_a_journal_that_is_open_here_does_not_give_up_its_locks() {
        return Stream.of(
                looking("verifying", (file, journal) -> assertWhole(1, file)),
                looking(
                        "backing up",
                        (file, journal) ->
                                assertInstanceOf(Verification.Whole.class, journal.backupTo(named("copy.journal")))),
                looking(
                        "opening it a second time",
                        (file, journal) -> open(file).close()));
    }

    private interface Look {
        void at(Path file, SqliteJournal journal) throws IOException;
    }

    private DynamicTest looking(String how, Look look) {
        return DynamicTest.dynamicTest(how, () -> {
            assumeTrue(Files.exists(LOCKS), "this machine does not list its locks");
            Path file = named(how + ".journal");
            try (SqliteJournal journal = open(file)) {
                journal.append(RUN, fact(1));
                long before = locks(file);
                look.at(file, journal);
                assertTrue(before > 0);
                assertEquals(before, locks(file));
            }
        });
    }

    private static long locks(Path file) throws IOException {
        String inode = ":" + Files.getAttribute(file, "unix:ino") + " ";
        try (Stream<String> lines = Files.lines(LOCKS)) {
            return lines.filter(line -> line.contains(inode)).count();
        }
    }

    @Test
    void a_clock_that_fails_leaves_the_journal_as_it_was() {
        boolean[] broken = {false};
        Path file = named("clock.journal");
        try (SqliteJournal journal = SqliteJournal.open(file, () -> {
            if (broken[0]) {
                throw new UnsupportedOperationException("no time");
            }
            return NEW_YEAR;
        })) {
            journal.append(RUN, fact(1));
            broken[0] = true;
            assertThrows(UnsupportedOperationException.class, () -> journal.append(RUN, fact(2)));
            broken[0] = false;
            assertEquals(2, journal.append(RUN, fact(2)).number());
        }
        assertWhole(2, file);
    }

    @Test
    void an_altered_fact_is_not_read_as_if_it_were_true() throws SQLException {
        Path file = named("altered.journal");
        try (SqliteJournal journal = open(file)) {
            IntStream.range(0, 5).forEach(k -> journal.append(RUN, fact(k)));
            Tampering.with(file, "UPDATE entry SET text = '{\"k\":9}' WHERE number = 3");
            assertEquals(2, journal.read(RUN, 0, 2).size());
            assertEquals(2, journal.read(RUN, 3, 9).size());
            JournalLost lost = assertThrows(JournalLost.class, () -> journal.read(RUN, 0, 9));
            assertTrue(String.valueOf(lost.getMessage()).contains("entry 3 of run/R-0001"), lost.getMessage());
            Tampering.with(file, "UPDATE entry SET form = 0 WHERE number = 4");
            assertThrows(JournalLost.class, () -> journal.read(RUN, 3, 1));
            Tampering.with(file, "DELETE FROM entry WHERE number = 2");
            assertThrows(JournalLost.class, () -> journal.read(RUN, 0, 3));
            Tampering.with(file, "UPDATE stream SET kind = '!!'");
            assertThrows(JournalLost.class, journal::seal);
        }
    }

    @TestFactory
    Stream<DynamicTest> what_is_not_a_journal_is_refused_and_left_alone() {
        return Stream.of("empty", "text", "database", "newer", "folder")
                .map(what -> DynamicTest.dynamicTest(what, () -> {
                    Path file = Tampering.notAJournal(folder, what);
                    byte[] before = Files.isDirectory(file) ? new byte[0] : Files.readAllBytes(file);
                    JournalLost lost = assertThrows(JournalLost.class, () -> open(file));
                    assertTrue(String.valueOf(lost.getMessage()).contains("Nothing was"), lost.getMessage());
                    if (!Files.isDirectory(file)) {
                        assertEquals(List.of(before.length), List.of(Files.readAllBytes(file).length));
                    }
                }));
    }

    @Test
    void a_journal_in_a_folder_that_is_not_there_is_not_begun() {
        assertThrows(JournalLost.class, () -> open(named("nowhere").resolve("a.journal")));
    }

    @Test
    void a_backup_is_whole_and_one_file_and_replaces_nothing() throws IOException {
        Path file = named("source.journal");
        Path copy = named("backup of ä.journal");
        try (SqliteJournal journal = open(file)) {
            IntStream.range(0, 50).forEach(k -> journal.append(RUN, fact(k)));
            journal.seal();
            assertEquals(
                    51,
                    assertInstanceOf(Verification.Whole.class, journal.backupTo(copy))
                            .facts());
            journal.append(RUN, fact(50));
            assertThrows(IOException.class, () -> journal.backupTo(copy));
            assertThrows(
                    IOException.class, () -> journal.backupTo(named("nowhere").resolve("b")));
        }
        assertWhole(51, copy);
        assertWhole(52, file);
        try (SqliteJournal journal = open(copy)) {
            assertEquals(51, journal.append(RUN, fact(50)).number());
        }
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(0, left.filter(p -> p.toString().contains(".half")).count());
        }
    }

    @Test
    void the_speed_of_appending_and_reading_is_told() {
        Path file = named("speed.journal");
        int count = 500;
        Fact tick = new Fact(1, "{\"at\":\"2026-01-01T00:00:00Z\",\"channels\":[" + "\"23.41\",".repeat(20) + "null]}");
        try (SqliteJournal journal = open(file)) {
            long start = System.nanoTime();
            IntStream.range(0, count).forEach(k -> journal.append(RUN, tick));
            double appending = (System.nanoTime() - start) / 1e9;
            start = System.nanoTime();
            assertEquals(count, journal.read(RUN, 0, count).size());
            double reading = (System.nanoTime() - start) / 1e9;
            System.out.printf(
                    java.util.Locale.ROOT, "appends: %.0f/s, reads: %.0f/s%n", count / appending, count / reading);
        }
    }

    private static void assertWhole(long facts, Path file) {
        Verification found = Verification.of(file);
        assertEquals(
                facts,
                assertInstanceOf(Verification.Whole.class, found, found::toString)
                        .facts());
    }
}
