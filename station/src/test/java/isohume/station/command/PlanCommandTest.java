// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import isohume.station.demo.HeadlessDemo;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can be said of the demonstration's plan before anything moves. */
class PlanCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    private Path plan = Path.of("");

    @BeforeEach
    void copyTheDemonstrationsPlan() throws IOException {
        for (String name : List.of("plan.yaml", "bench.yaml")) {
            try (var in = HeadlessDemo.class.getResourceAsStream(name)) {
                Files.write(folder.resolve(name), Objects.requireNonNull(in).readAllBytes());
            }
        }
        plan = folder.resolve("plan.yaml");
    }

    @Test
    void a_plan_that_can_be_reached_is_told_point_by_point_and_as_a_whole() {
        Said said = Said.by("plan", "check", plan);
        assertEquals(0, said.code(), said.messages());
        assertEquals(
                15,
                said.answer()
                        .lines()
                        .filter(l -> l.matches(" *\\d+ .* reachable .*"))
                        .count(),
                said.answer());
        assertTrue(said.answer().contains("on the way: drying first"), said.answer());
        assertTrue(said.answer().contains("whole plan: about"), said.answer());
        assertTrue(said.answer().contains("of 80 g left, which lasts"), said.answer());
    }

    @Test
    void a_point_beyond_the_bench_is_told_with_its_limit_and_the_nearest_and_the_exit_code_says_so()
            throws IOException {
        change("plan.yaml", text -> text.replace("humidity: [20, 50, 70, 50, 20]", "humidity: [20, 50, 95, 50, 20]"));
        Said said = Said.by("plan", "check", plan);
        assertEquals(1, said.code());
        assertTrue(said.answer().contains("NOT REACHABLE"), said.answer());
        assertTrue(
                said.messages()
                        .contains("point 13: 95.0 % RH at 40.0 °C cannot be reached: the wet air is too dry for it"),
                said.messages());
    }

    @Test
    void a_drying_agent_that_is_old_now_takes_the_driest_points_away() {
        Said said = Said.by("plan", "check", "--dry-floor", "0", plan);
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("with a frost point of 0.0 °C"), said.messages());
    }

    @Test
    void where_the_tolerance_is_smaller_than_the_uncertainty_no_pass_is_possible() throws IOException {
        change(
                "plan.yaml",
                text -> text.replace("resolution: 0.1, tolerance: 1.5,", "resolution: 0.1, tolerance: 0.4,"));
        Said said = Said.by("plan", "check", plan);
        assertEquals(0, said.code());
        assertTrue(said.answer().contains("no pass possible for B-2077/relative_humidity"), said.answer());
    }

    @Test
    void the_json_holds_what_the_table_says() throws IOException {
        JsonNode answer = JSON.readTree(Said.by("plan", "check", "--json", plan).answer());
        JsonNode mid = answer.get("points").get(6);
        assertEquals("reachable", mid.get("reach").textValue());
        assertEquals(12.03, mid.get("dew_point").doubleValue(), 0.005); // of 50 % RH at 23 °C, Sonntag and Greenspan
        assertEquals(6, mid.get("predictions").size());
        assertTrue(mid.get("approach").get("low").doubleValue()
                < mid.get("approach").get("high").doubleValue());
        assertTrue(answer.get("reachable").booleanValue());
    }

    @Test
    void times_are_learned_from_runs_of_the_same_bench() throws IOException {
        Path data = folder.resolve("data");
        new HeadlessDemo(3, progress -> {}).into(data);
        JsonNode before = JSON.readTree(Said.by("plan", "check", "--json", plan).answer());
        JsonNode after = JSON.readTree(
                Said.by("plan", "check", "--json", "--data", data, plan).answer());
        assertEquals(14, after.get("learned_from_points").intValue());
        assertTrue(relativeSpread(after) < 0.5 * relativeSpread(before));
        change("bench.yaml", text -> text.replace("bench: Portable", "bench: Another"));
        JsonNode other = JSON.readTree(
                Said.by("plan", "check", "--json", "--data", data, plan).answer());
        assertEquals(0, other.get("learned_from_points").intValue());
    }

    private static double relativeSpread(JsonNode answer) {
        JsonNode whole = answer.get("whole");
        return whole.get("spread").doubleValue() / whole.get("minutes").doubleValue();
    }

    @Test
    void a_mistake_in_a_plan_is_told_with_line_and_column() throws IOException {
        change("plan.yaml", text -> text.replace("temperature: 23, humidity", "temperature: warm, humidity"));
        for (String what : List.of("check", "order")) {
            Said said = Said.by("plan", what, plan);
            assertEquals(1, said.code());
            assertTrue(
                    said.messages().matches("(?s).*plan\\.yaml:\\d+:\\d+: temperature is \"warm\".*"), said.messages());
        }
    }

    @Test
    void an_order_that_breaks_no_rule_is_written_to_a_new_file_with_everything_else_kept() throws IOException {
        Path out = folder.resolve("ordered.yaml");
        String before = Files.readString(plan);
        Said said = Said.by("plan", "order", plan, "--out", out);
        assertEquals(0, said.code(), said.messages());
        assertTrue(said.answer().contains("no order that keeps to the rules takes less"), said.answer());
        assertTrue(said.answer().contains("the plan as it is breaks a rule: point 3"), said.answer());
        assertEquals(before, Files.readString(plan));
        String written = Files.readString(out);
        assertEquals(
                before.substring(0, before.indexOf("\npoints:")), written.substring(0, written.indexOf("\npoints:")));
        assertTrue(written.contains("# °C; % RH, first up"), written);
        Said again = Said.by("plan", "order", "--json", out);
        JsonNode answer = JSON.readTree(again.answer());
        assertFalse(answer.get("before").has("breaks"), again.answer());
        assertEquals(
                answer.get("after").get("whole").get("minutes").doubleValue(),
                answer.get("before").get("whole").get("minutes").doubleValue(),
                1e-6);
    }

    @Test
    void wet_points_last_at_each_temperature_keep_temperature_outermost() throws IOException {
        change("plan.yaml", text -> text + "order: {wet: last_at_temperature}\n");
        JsonNode after =
                JSON.readTree(Said.by("plan", "order", "--json", plan).answer()).get("after");
        List<Double> temperatures = new ArrayList<>();
        for (JsonNode point : after.get("points")) {
            double celsius = point.get("temperature").doubleValue();
            if (temperatures.isEmpty() || Math.abs(temperatures.getLast() - celsius) > 1e-9) {
                temperatures.add(celsius);
            }
        }
        assertEquals(3, temperatures.size(), temperatures.toString());
    }

    @Test
    void a_file_that_is_there_is_not_replaced() throws IOException {
        Path out = Files.writeString(folder.resolve("taken.yaml"), "mine");
        Said said = Said.by("plan", "order", plan, "--out", out);
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("nothing was changed; choose a new name"), said.messages());
        assertEquals("mine", Files.readString(out));
        assertEquals(1, Said.by("plan", "order", plan, "--out", plan).code());
    }

    private void change(String name, UnaryOperator<String> change) throws IOException {
        Path file = folder.resolve(name);
        String before = Files.readString(file);
        String after = change.apply(before);
        assertFalse(after.equals(before), "the test changes nothing");
        Files.writeString(file, after);
    }
}
