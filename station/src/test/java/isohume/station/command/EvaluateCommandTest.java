// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.station.demo.HeadlessDemo;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings that a run has recorded, evaluated again from their file. */
class EvaluateCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final long SEED = 3;

    @TempDir
    static Path folder;

    private static Path demo;
    private static Path plan;

    @BeforeAll
    static void carryOutTheDemonstration() throws IOException {
        System.out.println("seed " + SEED);
        demo = folder.resolve("demo");
        new HeadlessDemo(SEED, progress -> {}).into(demo);
        for (String name : List.of("plan.yaml", "bench.yaml")) {
            try (var in = HeadlessDemo.class.getResourceAsStream(name)) {
                Files.write(folder.resolve(name), Objects.requireNonNull(in).readAllBytes());
            }
        }
        plan = folder.resolve("plan.yaml");
    }

    @Test
    void recorded_readings_give_the_same_results_again() throws IOException {
        Path out = folder.resolve("again");
        Said said = Said.by("evaluate", "--plan", plan, "--readings", demo.resolve("readings.csv"), "--out", out);
        assertEquals(0, said.code(), said.messages());
        assertEquals(withoutWhoSaid(demo.resolve("summary.json")), withoutWhoSaid(out.resolve("summary.json")));
        assertEquals(Files.readString(demo.resolve("readings.csv")), Files.readString(out.resolve("readings.csv")));
        assertTrue(Files.size(out.resolve("certificate-A-1042.pdf")) > 10_000);
    }

    /** A file cannot know that it was the mirror that reported its deposit; the plan may say so. */
    private static JsonNode withoutWhoSaid(Path summary) throws IOException {
        JsonNode tree = JSON.readTree(Files.readString(summary));
        for (JsonNode point : tree.get("points")) {
            JsonNode removed = ((ObjectNode) point.get("conditions")).remove("deposit_by");
            assertTrue(removed.isTextual());
        }
        return tree;
    }

    @Test
    void the_plan_can_say_who_decided_on_the_deposit() throws IOException {
        Path said = folder.resolve("said.yaml");
        Files.writeString(
                said,
                Files.readString(plan).replace("  operator:", "  deposit-by: reported by the mirror\n  operator:"));
        Path out = folder.resolve("said");
        assertEquals(0, evaluate(said, demo.resolve("readings.csv"), out).code());
        assertEquals(
                JSON.readTree(Files.readString(demo.resolve("summary.json"))),
                JSON.readTree(Files.readString(out.resolve("summary.json"))));
    }

    @Test
    void what_the_file_leaves_out_is_remarked_on_and_stated_in_the_summary() throws IOException {
        Path some = readings("some.csv", line -> !line.matches("[^,]+,(4|7),.*"));
        Said said = Said.by("evaluate", "--json", "--plan", plan, "--readings", some, "--out", folder.resolve("some"));
        assertEquals(0, said.code(), said.messages());
        String remark = "the plan's points 4, 7 have no readings in some.csv and no result";
        assertTrue(said.messages().contains(remark), said.messages());
        assertEquals(remark, JSON.readTree(said.answer()).get("remarks").get(0).textValue());
    }

    @Test
    void an_instrument_without_a_column_is_remarked_on() throws IOException {
        Path fewer = folder.resolve("fewer.csv");
        List<String> lines = Files.readAllLines(demo.resolve("readings.csv"));
        String[] headings = lines.getFirst().split(",", -1);
        Files.write(
                fewer,
                lines.stream()
                        .map(line -> IntStream.range(0, headings.length)
                                .filter(i -> !headings[i].startsWith("C-3310/temperature"))
                                .mapToObj(i -> line.split(",", -1)[i])
                                .collect(Collectors.joining(",")))
                        .toList());
        Said said = evaluate(plan, fewer, folder.resolve("fewer"));
        assertEquals(0, said.code(), said.messages());
        assertTrue(said.messages().contains("C-3310/temperature has no readings"), said.messages());
    }

    @Test
    void readings_under_the_wrong_point_are_remarked_on() throws IOException {
        Path swapped = folder.resolve("swapped.csv");
        Files.write(
                swapped,
                Files.readAllLines(demo.resolve("readings.csv")).stream()
                        .map(line -> line.replaceFirst("Z,2,", "Z,x,").replaceFirst("Z,3,", "Z,2,"))
                        .map(line -> line.replaceFirst("Z,x,", "Z,3,"))
                        .toList());
        Said said = evaluate(plan, swapped, folder.resolve("swapped"));
        assertTrue(said.messages().contains("point 2 was read at"), said.messages());
        assertTrue(said.messages().contains("is the number of the point right?"), said.messages());
    }

    @Test
    void readings_of_another_plan_are_refused_with_their_lines() throws IOException {
        Path other = readings("other.csv", line -> true);
        Files.writeString(
                other,
                Files.readString(other)
                        .replace("A-1042/temperature", "Z-1/temperature")
                        .replaceAll("Z,15,", "Z,16,"));
        Said said = evaluate(plan, other, folder.resolve("other"));
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("Z-1/temperature belongs to no instrument"), said.messages());
        assertTrue(said.messages().contains("the point is 16; the plan has the points 1 to 15"), said.messages());
        assertTrue(Files.notExists(folder.resolve("other")));
    }

    @Test
    void a_reference_beyond_its_certificate_is_named_with_the_point() throws IOException {
        Path hot = folder.resolve("hot.csv");
        Files.writeString(
                hot,
                Files.readString(demo.resolve("readings.csv")).replaceAll("(?m)^([^,]+,1,[a-z]+,)[^,]+,", "$155.1,"));
        Said said = evaluate(plan, hot, folder.resolve("hot"));
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("hot.csv: point 1: "), said.messages());
        assertTrue(said.messages().contains("use a reference that is certified there"), said.messages());
    }

    private static Path readings(String name, Predicate<String> kept) throws IOException {
        Path file = folder.resolve(name);
        Files.write(
                file,
                Files.readAllLines(demo.resolve("readings.csv")).stream()
                        .filter(kept)
                        .toList());
        return file;
    }

    private static Said evaluate(Path plan, Path readings, Path out) {
        return Said.by("evaluate", "--plan", plan, "--readings", readings, "--out", out);
    }
}
