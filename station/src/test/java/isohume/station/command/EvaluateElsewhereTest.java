// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The archive store's readings, taken apart into a file of the reference and one of a logger that is 754 s ahead. */
class EvaluateElsewhereTest {
    private static final Path EXAMPLE = Path.of("..", "examples", "archive-store");
    private static final int AHEAD = 754;

    @TempDir
    private Path folder;

    @BeforeEach
    void two_files() throws IOException {
        StringBuilder reference =
                new StringBuilder("time,dew point [°C],temperature [°C],pressure [hPa],mirror pressure [hPa]\n");
        StringBuilder logger = new StringBuilder("Zeit;rel. Feuchte [%];Temperatur [°C]\n");
        List<String> lines = Files.readAllLines(EXAMPLE.resolve("readings.csv"));
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            reference
                    .append(String.join(",", cells[0], cells[3], cells[4], cells[5], cells[6]))
                    .append('\n');
            String shifted = OffsetDateTime.parse(cells[0]).plusSeconds(AHEAD).toLocalDateTime() + "";
            logger.append(String.join(
                            ";", shifted.replace('T', ' '), cells[7].replace('.', ','), cells[8].replace('.', ',')))
                    .append('\n');
        }
        Files.writeString(folder.resolve("reference.csv"), reference);
        Files.writeString(folder.resolve("logger.csv"), logger);
    }

    @Test
    void files_of_their_own_give_the_errors_of_the_paired_file() throws IOException {
        Path paired = folder.resolve("paired");
        Path apart = folder.resolve("apart");
        assertEquals(
                0,
                Said.by(
                                "evaluate",
                                "--plan",
                                EXAMPLE.resolve("plan.yaml"),
                                "--readings",
                                EXAMPLE.resolve("readings.csv"),
                                "--out",
                                paired)
                        .code());
        Said said = Said.by(
                "evaluate",
                "--plan",
                EXAMPLE.resolve("plan.yaml"),
                "--out",
                apart,
                "--reference",
                folder.resolve("reference.csv"),
                "--instrument",
                "L-07=" + folder.resolve("logger.csv"),
                "--deposit",
                "water",
                "--answer",
                "zone=+02:00",
                "--clock",
                "L-07=2026-05-19T08:12:34+02:00/2026-05-19T08:00:00+02:00,"
                        + "2026-05-19T20:12:34+02:00/2026-05-19T20:00:00+02:00");
        assertEquals(0, said.code(), said.messages());
        assertTrue(said.messages().contains("the clock of L-07 was 754 s ahead"), said.messages());
        assertTrue(said.messages().contains("within the guard at the beginning of point 1"), said.messages());
        JsonNode one = points(paired);
        JsonNode other = points(apart);
        int compared = 0;
        for (JsonNode point : other) {
            for (JsonNode same : one) {
                if (same.path("instrument").equals(point.path("instrument"))
                        && same.path("quantity").equals(point.path("quantity"))
                        && same.path("point").equals(point.path("point"))) {
                    // fewer rows of the same plateau: apart by no more than the scatter of the mean
                    assertEquals(
                            same.path("error").asDouble(), point.path("error").asDouble(), 0.1);
                    compared++;
                }
            }
        }
        assertEquals(16, compared); // two quantities at eight points
    }

    @Test
    void a_clock_that_nothing_tells_is_refused_with_what_to_do() {
        Said said = Said.by(
                "evaluate",
                "--plan",
                EXAMPLE.resolve("plan.yaml"),
                "--out",
                folder.resolve("none"),
                "--reference",
                folder.resolve("reference.csv"),
                "--instrument",
                "L-09=" + folder.resolve("logger.csv"),
                "--deposit",
                "water",
                "--answer",
                "zone=+02:00");
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("the plan has no instrument L-09"), said.messages());
    }

    private static JsonNode points(Path out) throws IOException {
        return JsonMapper.builder()
                .build()
                .readTree(out.resolve("summary.json").toFile())
                .path("points");
    }
}
