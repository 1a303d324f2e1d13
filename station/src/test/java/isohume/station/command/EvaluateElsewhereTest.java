// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import isohume.device.export.Answers;
import isohume.device.export.Export;
import isohume.device.export.LoggedTable;
import isohume.device.export.Understanding.Understood;
import isohume.journal.SqliteJournal;
import isohume.result.alignment.Alignment.Found;
import isohume.station.elsewhere.Usage;
import isohume.station.imported.Aligned;
import isohume.station.imported.ImportedFiles;
import isohume.station.job.Worksheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
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

    @Test
    void a_plan_may_name_the_files_itself() throws IOException {
        Files.copy(EXAMPLE.resolve("bench.yaml"), folder.resolve("bench.yaml"));
        Path plan = folder.resolve("plan.yaml");
        String recorded = """

                recorded:
                  reference: {file: reference.csv}
                  deposit: water
                  instruments:
                    - {id: L-07, file: logger.csv, clock: "2026-05-19T08:12:34+02:00/2026-05-19T08:00:00+02:00,\
                2026-05-19T20:12:34+02:00/2026-05-19T20:00:00+02:00"}
                """;
        Files.writeString(plan, Files.readString(EXAMPLE.resolve("plan.yaml")) + recorded);
        Said said = Said.by("evaluate", "--plan", plan, "--out", folder.resolve("named"), "--answer", "zone=+02:00");
        assertEquals(0, said.code(), said.messages());
        assertTrue(said.messages().contains("the clock of L-07 was 754 s ahead"), said.messages());
    }

    @Test
    void every_reading_is_used_at_a_point_or_has_a_reason() throws IOException {
        Files.copy(EXAMPLE.resolve("bench.yaml"), folder.resolve("bench.yaml"));
        Path plan = folder.resolve("plan.yaml");
        Files.writeString(plan, Files.readString(EXAMPLE.resolve("plan.yaml")) + """

                recorded: {reference: {file: r.csv}, deposit: water, instruments: [{id: L-07, file: l.csv}]}
                """);
        LoggedTable logger = table("logger.csv");
        Usage usage = Usage.of(
                Worksheet.read(plan),
                table("reference.csv"),
                logger,
                new Found(AHEAD, 1, logger.at(0).getEpochSecond(), 0, 0, "known"));
        int used = usage.used().values().stream().mapToInt(n -> n).sum();
        int unused = usage.unused().values().stream().mapToInt(n -> n).sum();
        assertEquals(logger.size(), used + unused);
        assertEquals(8, usage.used().values().stream().filter(n -> n >= 2).count());
        assertTrue(usage.unused().keySet().stream().anyMatch(why -> why.contains("within the guard at the end")));
    }

    private LoggedTable table(String name) {
        Answers zone = Answers.of(Map.of("zone", "+02:00"));
        return assertInstanceOf(
                        Understood.class, Export.of(folder.resolve(name)).understand(zone))
                .table();
    }

    @Test
    void a_clock_that_was_confirmed_for_these_very_files_is_used() throws IOException {
        Path data = folder.resolve("data");
        Path logger = folder.resolve("logger.csv");
        Path reference = folder.resolve("reference.csv");
        assertEquals(
                0,
                Said.by("import", logger, "--answer", "zone=+02:00", "--data", data)
                        .code());
        // another offset than the records have, so that it is seen where it comes from; one for another reference
        try (SqliteJournal journal = SqliteJournal.open(data.resolve("journal.db"), InstantSource.system())) {
            ImportedFiles files = new ImportedFiles(data, journal);
            String hash = ImportedFiles.hash(logger);
            files.confirm(hash, new Aligned(ImportedFiles.hash(reference), 760, 20, 0, "the likeness", "A. Sample"));
            files.confirm(hash, new Aligned("0".repeat(64), 3600, 20, 0, "the likeness", "B. Sample"));
        }
        Said said = Said.by(
                "evaluate",
                "--plan",
                EXAMPLE.resolve("plan.yaml"),
                "--out",
                folder.resolve("confirmed"),
                "--reference",
                reference,
                "--instrument",
                "L-07=" + logger,
                "--deposit",
                "water",
                "--answer",
                "zone=+02:00",
                "--data",
                data);
        assertEquals(0, said.code(), said.messages());
        assertTrue(
                said.messages()
                        .contains("the clock of L-07 was 760 s ahead of the reference's, ± 20 s, by the likeness,"
                                + " confirmed by A. Sample"),
                said.messages());
    }

    private static JsonNode points(Path out) throws IOException {
        return JsonMapper.builder()
                .build()
                .readTree(out.resolve("summary.json").toFile())
                .path("points");
    }
}
