// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import isohume.journal.Fact;
import isohume.journal.Seal;
import isohume.journal.SqliteJournal;
import isohume.journal.StreamName;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerifyCommandTest {
    @TempDir
    Path data;

    private Path file;
    private Seal seal;

    @BeforeEach
    void writeAJournal() {
        file = data.resolve("journal.db");
        InstantSource clock = InstantSource.fixed(Instant.parse("2026-03-02T08:00:00Z"));
        try (SqliteJournal journal = SqliteJournal.open(file, clock)) {
            for (int i = 0; i < 3; i++) {
                var unused = journal.append(new StreamName("run", "R-1"), new Fact(1, "{\"reading\":\"50.\"}"));
            }
            seal = journal.seal();
        }
    }

    @Test
    void a_whole_journal_is_told_with_its_last_seal() throws IOException {
        Said said = Said.by("verify", data);
        assertEquals(0, said.code(), said.messages());
        assertTrue(said.answer().contains("1:" + seal.hash()), said.answer());
        JsonNode tree =
                new ObjectMapper().readTree(Said.by("verify", "--json", file).answer());
        assertTrue(tree.get("whole").booleanValue());
        assertEquals(2, tree.get("streams").intValue());
        assertEquals(4, tree.get("facts").intValue());
        assertEquals(seal.hash(), tree.get("last_seal").get("hash").textValue());
    }

    @Test
    void a_noted_seal_that_is_there_is_confirmed() {
        Said said = Said.by("verify", data, "--seal", "1:" + seal.hash());
        assertEquals(0, said.code(), said.messages());
        assertTrue(said.answer().contains("1 seal is in it as noted"), said.answer());
    }

    @Test
    void a_noted_seal_that_is_not_there_is_a_finding() {
        Said said = Said.by("verify", data, "--seal", "1:" + "0".repeat(64));
        assertEquals(1, said.code());
        assertTrue(said.answer().contains("seal/journal, entry 1"), said.answer());
    }

    @Test
    void a_changed_reading_is_found() throws IOException {
        changeAReading();
        Said said = Said.by("verify", "--json", data);
        assertEquals(1, said.code());
        JsonNode finding =
                new ObjectMapper().readTree(said.answer()).get("findings").get(0);
        assertEquals("run/R-1", finding.get("stream").textValue());
        assertTrue(said.messages().contains("put back a backup"), said.messages());
    }

    private void changeAReading() throws IOException {
        String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
        try (RandomAccessFile raw = new RandomAccessFile(file.toFile(), "rw")) {
            raw.seek(bytes.indexOf("{\"reading\":\"50.\"}") + 12);
            raw.write('6');
        }
    }

    @Test
    void a_folder_without_a_journal_is_said_to_be_one() {
        Said said = Said.by("verify", data.resolve("elsewhere"));
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("there is no journal at"), said.messages());
        assertTrue(said.messages().contains("elsewhere"), said.messages());
    }

    @Test
    void a_seal_that_is_none_is_wrong_use() {
        Said said = Said.by("verify", data, "--seal", "one");
        assertEquals(2, said.code());
        assertTrue(said.messages().contains("is not a seal"), said.messages());
    }
}
