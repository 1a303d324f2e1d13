// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImportCommandTest {
    @TempDir
    private Path folder;

    private Path file = Path.of("");

    @BeforeEach
    void an_exported_file() throws IOException {
        file = folder.resolve("logger.csv");
        StringBuilder text = new StringBuilder("Zeit;Temp. [°C];rel. Feuchte [%]\n");
        for (int minute = 0; minute < 60; minute++) {
            text.append(String.format("31.03.2026 08:%02d:00;20,5;45,%d%n", minute, minute % 10));
        }
        Files.write(file, text.toString().getBytes(Charset.forName("windows-1252")));
    }

    @Test
    void a_doubt_is_told_with_the_option_that_ends_it() {
        Said said = Said.by("import", file.toString(), "--check");
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("--answer zone=Europe/Berlin"), said.messages());
    }

    @Test
    void what_is_understood_is_told_and_nothing_is_kept() {
        Said said = Said.by("import", file.toString(), "--check", "--answer", "zone=Europe/Berlin");
        assertEquals(0, said.code());
        assertTrue(
                said.answer().contains("60 rows, 2026-03-31T06:00:00Z to 2026-03-31T06:59:00Z, every 1 min"),
                said.answer());
        assertTrue(said.answer().contains("relative_humidity"), said.answer());
    }

    @Test
    void a_saved_profile_ends_the_questions() throws IOException {
        Path profile = folder.resolve("p.yaml");
        Said first = Said.by(
                "import", file.toString(), "--answer", "zone=Europe/Berlin", "--save-profile", profile.toString());
        assertEquals(0, first.code());
        Said second = Said.by("import", file.toString(), "--profile", profile.toString(), "--check", "--json");
        assertEquals(0, second.code());
        JsonNode told = JsonMapper.builder().build().readTree(second.answer());
        assertEquals("understood", told.path("outcome").asText());
        assertEquals(60, told.path("rows").asInt());
        assertEquals(60.0, told.path("intervalSeconds").asDouble());
        assertEquals("45.9", told.path("columns").path(1).path("most").asText());
    }

    @Test
    void a_broken_place_is_told_with_line_and_column() throws IOException {
        String text = Files.readString(file, Charset.forName("windows-1252"));
        Files.writeString(file, text.replaceFirst("08:10:00;20,5", "08:10:00;2O,5"), Charset.forName("windows-1252"));
        Said said = Said.by("import", file.toString(), "--check", "--answer", "zone=Europe/Berlin");
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("logger.csv:12:2: \"2O,5\" is no number"), said.messages());
    }

    @Test
    void an_imported_file_is_kept_byte_for_byte_and_written_down() throws IOException {
        Path data = folder.resolve("data");
        Said said = Said.by("import", file.toString(), "--answer", "zone=Europe/Berlin", "--data", data.toString());
        assertEquals(0, said.code());
        try (var kept = Files.list(data.resolve("files"))) {
            Path copy = kept.findFirst().orElseThrow();
            assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(copy));
        }
        assertEquals(0, Said.by("verify", data.toString()).code());
    }
}
