// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.journal.Verification.Broken;
import isohume.journal.Verification.Finding;
import isohume.journal.Verification.Whole;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class VerificationTest {
    private static final Instant NEW_YEAR = Instant.parse("2026-01-01T00:00:00Z");

    @TempDir
    static Path model = Path.of("");

    private static Seal seal = new Seal(0, NEW_YEAR, "");

    @TempDir
    Path folder = Path.of("");

    private Path file = Path.of("");

    /** Streams run/R-1 to run/R-3 of ten facts, sealed, then two more facts in each. */
    @BeforeAll
    static void writeOnce() {
        try (SqliteJournal journal = SqliteJournal.open(model.resolve("a.journal"), () -> NEW_YEAR)) {
            append(journal, 0, 10);
            seal = journal.seal();
            append(journal, 10, 12);
        }
    }

    @BeforeEach
    void copy() throws IOException {
        file = folder.resolve("a.journal");
        Files.copy(model.resolve("a.journal"), file, StandardCopyOption.REPLACE_EXISTING);
    }

    private static void append(Journal journal, int from, int to) {
        for (int k = from; k < to; k++) {
            for (int run = 1; run <= 3; run++) {
                journal.append(new StreamName("run", "R-" + run), fact(run, k + 1));
            }
        }
    }

    private static Fact fact(int run, int k) {
        return new Fact(1, "{\"run\":" + run + ",\"k\":" + k + ",\"shown\":[" + "\"23.41\",".repeat(50) + "null]}");
    }

    private List<String> findings() {
        return findings(file);
    }

    private static List<String> findings(Path file, Seal... noted) {
        return switch (Verification.of(file, noted)) {
            case Whole whole -> List.of();
            case Broken broken ->
                broken.findings().stream().map(Finding::toString).toList();
        };
    }

    @Test
    void an_untouched_journal_is_whole_and_is_left_as_it_was() throws IOException {
        byte[] before = Files.readAllBytes(file);
        assertEquals(new Whole(4, 37, 31, seal), Verification.of(file, seal));
        assertTrue(java.util.Arrays.equals(before, Files.readAllBytes(file)));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(file), left.toList());
        }
    }

    @Test
    void a_journal_without_a_fact_is_whole() {
        Path empty = folder.resolve("empty.journal");
        SqliteJournal.open(empty, () -> NEW_YEAR).close();
        assertEquals(new Whole(0, 0, 0, null), Verification.of(empty));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = ';', textBlock = """
            changed text; UPDATE entry SET text = '{}' WHERE stream = 2 AND number = 5; run/R-2, entry 5: is not what was acknowledged
            changed form; UPDATE entry SET form = 2 WHERE stream = 2 AND number = 5; run/R-2, entry 5: is not what was acknowledged
            form beyond int; UPDATE entry SET form = 4294967297 WHERE stream = 2 AND number = 5; run/R-2, entry 5: is not what was acknowledged
            changed time; UPDATE entry SET at = at + 1 WHERE stream = 2 AND number = 1; run/R-2, entry 1: is not what was acknowledged
            changed last; UPDATE entry SET text = '{}' WHERE stream = 1 AND number = 12; run/R-1, entry 12: is not what was acknowledged
            behind a zero; UPDATE entry SET text = CAST(CAST(text AS BLOB) || x'00' || x'41' AS TEXT) WHERE stream = 2 AND number = 5; run/R-2, entry 5: is not what was acknowledged
            removed in middle; DELETE FROM entry WHERE stream = 3 AND number = 7; run/R-3, entry 7: was removed
            removed several; DELETE FROM entry WHERE stream = 3 AND number IN (7, 8); run/R-3, entry 7: was removed, with all up to entry 8
            removed first; DELETE FROM entry WHERE stream = 3 AND number = 1; run/R-3, entry 1: was removed
            removed tail; DELETE FROM entry WHERE stream = 3 AND number >= 10; run/R-3, entry 10: was removed after seal 1
            removed stream; DELETE FROM entry WHERE stream = 3; run/R-3: all entries were removed
            renamed stream; UPDATE stream SET id = 'R-9' WHERE place = 3; run/R-9, entry 1: is not what was acknowledged
            removed name; DELETE FROM stream WHERE place = 3; 12 entries belong to a stream whose name was removed
            not even a name; UPDATE stream SET kind = 'x y', id = '' WHERE place = 3; x y/, entry 1: is not what was acknowledged
            forged seal; UPDATE entry SET text = '{"heads":[]}' WHERE stream = 4; seal/journal, entry 1: is not what was acknowledged
            no number; DELETE FROM schema_number; the file has schema 0
            no tables; DROP TABLE entry; damaged
            no schema; DROP TABLE schema_number; damaged
            """)
    void what_was_done_to_the_file_is_found(String what, String sql, String finding) throws SQLException {
        Tampering.with(file, sql);
        List<String> found = findings();
        assertTrue(found.stream().anyMatch(line -> line.contains(finding)), () -> what + ": " + found);
    }

    @Test
    void a_single_change_is_reported_once() throws SQLException {
        Tampering.with(file, "UPDATE entry SET text = '{}' WHERE stream = 2 AND number = 5");
        assertEquals(1, findings().size());
    }

    @Test
    void entries_in_another_order_are_found() throws SQLException {
        Tampering.with(
                file,
                "UPDATE entry SET number = -1 WHERE stream = 2 AND number = 5",
                "UPDATE entry SET number = 5 WHERE stream = 2 AND number = 6",
                "UPDATE entry SET number = 6 WHERE stream = 2 AND number = -1");
        List<String> found = findings();
        assertTrue(found.get(0).startsWith("run/R-2, entry 5: "), found::toString);
        assertTrue(found.get(1).startsWith("run/R-2, entry 6: "), found::toString);
    }

    @Test
    void a_stream_chained_anew_betrays_itself_by_the_seal() throws SQLException {
        StreamName stream = new StreamName("run", "R-2");
        String previous = Chain.BEGINNING;
        for (int k = 1; k <= 12; k++) {
            Fact fact = fact(2, k == 5 ? 500 : k);
            Entry entry = Chain.entry(previous, stream, k, Microseconds.of(NEW_YEAR), fact);
            Tampering.with(
                    file,
                    "UPDATE entry SET text = '" + fact.text() + "', hash = '" + entry.hash()
                            + "' WHERE stream = 2 AND number = " + k);
            previous = entry.hash();
        }
        assertEquals(
                List.of("run/R-2, entry 10: was rewritten after seal 1 was set over it, at 2026-01-01T00:00:00Z"),
                findings());
    }

    @Test
    void a_cut_that_takes_the_seals_along_betrays_itself_by_a_seal_noted_elsewhere() throws SQLException {
        Tampering.with(file, "DELETE FROM entry WHERE stream = 4", "DELETE FROM stream WHERE place = 4");
        Tampering.with(file, "DELETE FROM entry WHERE stream = 3 AND number > 8");
        assertEquals(List.of(), findings());
        List<String> found = findings(file, seal);
        assertEquals(1, found.size());
        assertTrue(found.getFirst().startsWith("seal/journal, entry 1: was removed"), found::toString);
        Seal other = new Seal(1, NEW_YEAR, "0".repeat(64));
        assertEquals(1, findings(file, other).size());
    }

    @Test
    void facts_behind_the_last_seal_can_be_cut_off_unnoticed_which_is_why_seals_are_set() throws SQLException {
        Tampering.with(file, "DELETE FROM entry WHERE stream = 3 AND number > 10");
        assertEquals(List.of(), findings(file, seal));
    }

    @Test
    void many_findings_are_cut_short() throws SQLException {
        Tampering.with(
                file,
                "WITH RECURSIVE more (k) AS (SELECT 13 UNION ALL SELECT k + 1 FROM more WHERE k < 1200)"
                        + " INSERT INTO entry SELECT 2, k, 0, 1, '{}', '' FROM more");
        List<String> found = findings();
        assertEquals(Verification.MOST_FINDINGS + 1, found.size());
        assertEquals("there are further findings, which are not listed", found.getLast());
    }

    @ParameterizedTest
    @CsvSource({"empty,empty", "text,not a journal", "database,another program", "newer,schema 2", "folder,no file"})
    void what_is_not_a_journal_is_called_so(String what, String finding) throws IOException, SQLException {
        List<String> found = findings(Tampering.notAJournal(folder, what));
        assertEquals(1, found.size(), found::toString);
        assertTrue(found.getFirst().contains(finding), found::toString);
    }

    @Test
    void a_file_that_is_not_there_is_called_so() {
        assertEquals(1, findings(folder.resolve("nowhere")).size());
    }

    @TestFactory
    Stream<DynamicTest> wherever_the_file_is_cut_off_it_is_found() throws IOException {
        long size = Files.size(file);
        return Stream.of(1L, 15L, 16L, 99L, 100L, 1_000L, 4_095L, 4_096L, 4_097L, size / 2, size - 4_096, size - 1)
                .map(length -> DynamicTest.dynamicTest("to " + length + " bytes", () -> {
                    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                        channel.truncate(length);
                    }
                    assertTrue(!findings().isEmpty());
                    copy();
                }));
    }

    @ParameterizedTest
    @ValueSource(longs = {20261125})
    void a_flipped_byte_never_makes_a_false_fact(long seed) throws IOException {
        System.out.println("flipped bytes, seed " + seed);
        Random random = new Random(seed);
        byte[] whole = Files.readAllBytes(file);
        List<Entry> truth = entries(file);
        int found = 0;
        int rounds = 150;
        for (int round = 0; round < rounds; round++) {
            int where = random.nextInt(whole.length);
            Path damaged = folder.resolve("damaged.journal");
            Files.write(damaged, whole);
            try (FileChannel channel = FileChannel.open(damaged, StandardOpenOption.WRITE)) {
                channel.write(ByteBuffer.wrap(new byte[] {(byte) (whole[where] ^ (1 + random.nextInt(255)))}), where);
            }
            if (Verification.of(damaged) instanceof Whole) {
                int at = where;
                assertEquals(truth, entries(damaged), () -> "byte " + at); // unused room, or a harmless header field
            } else {
                found++;
            }
        }
        System.out.println(found + " of " + rounds + " flipped bytes found, the others were in unused room");
        assertTrue(found > 0);
    }

    private static List<Entry> entries(Path file) {
        try (SqliteJournal journal = SqliteJournal.open(file, () -> NEW_YEAR)) {
            return IntStream.rangeClosed(1, 3)
                    .boxed()
                    .flatMap(run -> journal.read(new StreamName("run", "R-" + run), 0, 1_000).stream())
                    .toList();
        }
    }

    @Test
    void a_journal_is_verified_while_it_is_written() {
        try (SqliteJournal journal = SqliteJournal.open(file, () -> NEW_YEAR)) {
            for (int k = 12; k < 20; k++) {
                append(journal, k, k + 1);
                Whole whole = assertInstanceOf(Whole.class, Verification.of(file, seal));
                assertEquals(37 + 3L * (k - 11), whole.facts());
            }
        }
    }

    @Test
    void a_seal_covers_what_was_written_since_the_one_before() {
        try (SqliteJournal journal = SqliteJournal.open(file, () -> NEW_YEAR)) {
            Seal second = journal.seal();
            assertEquals(2, second.number());
            assertEquals(second, journal.seal());
            journal.append(new StreamName("bench", "B"), new Fact(1, "{}"));
            Seal third = journal.seal();
            assertEquals(3, third.number());
            assertEquals(new Whole(5, 40, 40, third), Verification.of(file, seal, second, third));
            Entry listed = journal.read(Seal.STREAM, 2, 1).getFirst();
            String head =
                    journal.read(new StreamName("bench", "B"), 0, 1).getFirst().hash();
            assertEquals(
                    "{\"heads\":[[\"bench/B\",1,\"" + head + "\"]]}",
                    listed.fact().text());
        }
    }

    @Test
    void a_journal_without_facts_can_be_sealed() {
        Path empty = folder.resolve("empty.journal");
        try (SqliteJournal journal = SqliteJournal.open(empty, () -> NEW_YEAR)) {
            Seal only = journal.seal();
            assertEquals(only, journal.seal());
            assertEquals(new Whole(1, 1, 1, only), Verification.of(empty, only));
        }
    }

    @Test
    void more_heads_than_one_seal_lists_are_sealed_in_a_row() {
        List<Tables.Head> heads = IntStream.rangeClosed(1, 2 * Seal.MOST_HEADS + 1)
                .mapToObj(k -> new Tables.Head(new StreamName("run", "R-" + k), k, "0".repeat(64)))
                .toList();
        List<List<Tables.Head>> due = Seal.due(heads, new MemoryJournal(() -> NEW_YEAR));
        assertEquals(
                List.of(Seal.MOST_HEADS, Seal.MOST_HEADS, 1),
                due.stream().map(List::size).toList());
        assertEquals(heads, due.stream().flatMap(List::stream).toList());
        for (List<Tables.Head> listed : due) {
            assertEquals(Optional.of(listed), Seal.heads(Seal.fact(listed).text()));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"heads\":[}",
                "{\"heads\":[] }",
                "{\"heads\":[[\"run/R\",0,\"a\"]]}",
                "{\"heads\":[[\"run/R\",01,\"0000000000000000000000000000000000000000000000000000000000000000\"]]}"
            })
    void a_text_that_is_no_seal_is_not_taken_for_one(String text) {
        assertEquals(Optional.empty(), Seal.heads(text));
    }

    @Test
    void a_journal_that_was_never_sealed_has_no_last_seal() {
        Path unsealed = folder.resolve("unsealed.journal");
        try (SqliteJournal journal = SqliteJournal.open(unsealed, () -> NEW_YEAR)) {
            append(journal, 0, 1);
        }
        assertNull(assertInstanceOf(Whole.class, Verification.of(unsealed)).lastSeal());
    }
}
