// SPDX-License-Identifier: Apache-2.0
package isohume.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import isohume.simulator.BenchParameters;
import isohume.simulator.SimulatedBench;
import isohume.simulator.Spoken;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Devices are tried through the program's data, with no bench beside it. */
class DevicesIT {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static RunningProgram program;

    @BeforeAll
    static void open() throws Exception {
        program = RunningProgram.with(
                "serve",
                "--port",
                "0",
                "--data",
                Files.createTempDirectory("devices").toString());
        assertTrue(program.address().startsWith("http://"));
    }

    @AfterAll
    static void close() {
        program.close();
    }

    private static String wish(String description) throws IOException {
        return JSON.writeValueAsString(Map.of("description", description, "seconds", 60));
    }

    private static JsonNode trial(int number) throws Exception {
        return JSON.readTree(program.get("api/devices/trials/" + number));
    }

    @Test
    void a_trial_is_begun_looked_at_and_stopped() throws Exception {
        try (SimulatedBench bench =
                SimulatedBench.start(BenchParameters.portable(), 1, Instant.parse("2026-03-02T08:00:00Z"), 0)) {
            int port = bench.speak(Spoken.TEXT, 0);
            String example = JSON.readTree(program.get("api/devices"))
                    .at("/examples/text")
                    .asText();
            String here = example.replace(
                    "serial: {path: /dev/ttyUSB0, baud: 9600} ", "tcp: {host: 127.0.0.1, port: " + port + "} ");
            int number = JSON.readTree(program.post("api/devices/trials", wish(here)))
                    .at("/trial")
                    .asInt();
            long end = System.nanoTime() + 30_000_000_000L;
            while (trial(number).at("/reads").asInt() < 3) {
                assertTrue(System.nanoTime() < end, () -> program.said());
            }
            JsonNode stopped = JSON.readTree(program.post("api/devices/trials/" + number + "/stop", "{}"));
            assertEquals("stopped", stopped.at("/state").asText());
            assertEquals(
                    "> 3F 31 31 0D 0A  # ?11..", stopped.at("/transcript/0").asText());
            assertTrue(stopped.at("/good").asBoolean(), stopped::toString);
            assertTrue(stopped.at("/median_ms").asDouble() > 0, stopped::toString);
        }
    }

    @Test
    void what_is_no_description_is_refused_with_its_place() {
        String said = String.valueOf(
                assertThrows(IOException.class, () -> program.post("api/devices/trials", wish("device: p")))
                        .getMessage());
        assertTrue(said.contains("answered 400") && said.contains("line is missing"), said);
    }

    @Test
    void a_wish_for_nothing_is_refused() {
        for (String nothing : new String[] {"", "[]", "{}"}) {
            String said =
                    String.valueOf(assertThrows(IOException.class, () -> program.post("api/devices/trials", nothing))
                            .getMessage());
            assertTrue(said.contains("answered 400"), said);
        }
    }

    @Test
    void a_trial_has_an_end() {
        String said = String.valueOf(assertThrows(
                        IOException.class,
                        () -> program.post("api/devices/trials", "{\"description\": \"device: p\", \"seconds\": 601}"))
                .getMessage());
        assertTrue(said.contains("answered 400"), said);
    }

    @Test
    void the_calls_are_in_the_openapi_document() throws Exception {
        String document = program.text("api/openapi");
        assertTrue(document.contains("/api/devices/trials/{number}/stop:"), document);
    }
}
