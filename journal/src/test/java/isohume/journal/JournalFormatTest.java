// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The file format as published in docs/formats/journal.md, against what is outside this module: the hashes below were
 * computed by coreutils' sha256sum from the bytes written out there, and the program printed there is run.
 */
final class JournalFormatTest {
    private static final Path PAGE = Path.of("..", "docs", "formats", "journal.md");
    private static final StreamName RUN = new StreamName("run", "R-0001");
    private static final String FIRST = "a36a0a1151a61d9ae4df346ac112a90dd0cbda506c3c6cda14a05222a6da14e0";
    private static final String SECOND = "883feda2443daf126a0fe4dff902440696ca1abb3e0683e305f867603226467c";
    private static final String ASKED = "{\"asked\":{\"temperature\":\"23 °C\",\"humidity\":\"50 %\"}}";

    @TempDir
    Path folder = Path.of("");

    private Path sample = Path.of("");

    @BeforeEach
    void copy() throws IOException {
        sample = folder.resolve("schema-1.journal");
        try (InputStream in = JournalFormatTest.class.getResourceAsStream("schema-1.journal")) {
            Files.copy(Objects.requireNonNull(in), sample);
        }
    }

    @Test
    void the_chain_hashes_the_bytes_of_the_worked_example() {
        assertEquals(FIRST, Chain.hash("", "run/R-0001", 1, 1767225600000000L, 1, "{}".getBytes(UTF_8)));
        assertEquals(SECOND, Chain.hash(FIRST, "run/R-0001", 2, 1767256200000001L, 2, ASKED.getBytes(UTF_8)));
    }

    @Test
    void the_page_prints_bytes_and_hashes_that_belong_together() throws IOException, NoSuchAlgorithmException {
        List<String> bytes = blocks("15:isohume entry 1,[^\n]*");
        List<String> hashes = blocks("[0-9a-f]{64}");
        assertEquals(List.of(FIRST, SECOND), hashes);
        for (int example = 0; example < hashes.size(); example++) {
            byte[] hash = MessageDigest.getInstance("SHA-256")
                    .digest(bytes.get(example).getBytes(UTF_8));
            assertEquals(hashes.get(example), HexFormat.of().formatHex(hash));
        }
    }

    /** The code blocks of the page that are one line of this kind. */
    private static List<String> blocks(String line) throws IOException {
        return Pattern.compile("```\n(" + line + ")\n```")
                .matcher(Files.readString(PAGE))
                .results()
                .map(block -> block.group(1))
                .toList();
    }

    @Test
    void the_sample_of_schema_1_is_read_and_verified_forever() {
        Verification.Whole whole = assertInstanceOf(Verification.Whole.class, Verification.of(sample));
        assertEquals(List.of(3L, 6L, 5L), List.of(whole.streams(), whole.facts(), whole.sealed()));
        try (SqliteJournal journal = SqliteJournal.open(sample, () -> Instant.parse("2046-01-01T00:00:00Z"))) {
            List<Entry> run = journal.read(RUN, 0, 10);
            assertEquals(4, run.size());
            assertEquals(
                    new Entry(RUN, 1, Instant.parse("2026-01-01T00:00:00Z"), new Fact(1, "{}"), FIRST), run.get(0));
            assertEquals(
                    new Entry(RUN, 2, Instant.parse("2026-01-01T08:30:00.000001Z"), new Fact(2, ASKED), SECOND),
                    run.get(1));
            assertEquals(Instant.parse("2026-01-01T08:29:59.5Z"), run.get(2).at());
            assertEquals(
                    "{\"shown\":[\"23.04\",\"−12,3\",null],\"note\":\"湿度 🌡\"}",
                    run.get(2).fact().text());
            assertEquals(List.of(new StreamName("bench", "B-1")), journal.streams("bench"));
            assertEquals(5, journal.append(RUN, new Fact(1, "{}")).number());
            assertEquals(2, journal.seal().number());
        }
        assertInstanceOf(Verification.Whole.class, Verification.of(sample));
    }

    @Test
    void the_program_on_the_page_agrees() throws IOException, InterruptedException, SQLException {
        assertEquals("whole: 6 entries", printed());
        Tampering.with(sample, "UPDATE entry SET at = at - 1 WHERE form = 3");
        assertEquals("run/R-0001: entry 3 was changed", printed());
    }

    private String printed() throws IOException, InterruptedException {
        String page = Files.readString(PAGE);
        int start = page.indexOf("```python\n") + "```python\n".length();
        assertTrue(start > "```python\n".length());
        Path program = folder.resolve("verify.py");
        Files.writeString(program, page.substring(start, page.indexOf("```", start)));
        Process python;
        try {
            python = new ProcessBuilder("python3", program.toString(), sample.toString())
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException withoutPython) {
            assumeTrue(false, "there is no python3 on this machine");
            throw withoutPython;
        }
        String printed = new String(python.getInputStream().readAllBytes(), UTF_8).strip();
        return python.waitFor() <= 1 ? printed : "failed: " + printed;
    }
}
