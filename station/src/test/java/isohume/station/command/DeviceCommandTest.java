// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import isohume.simulator.BenchParameters;
import isohume.simulator.SimulatedBench;
import isohume.simulator.Spoken;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DeviceCommandTest {
    @TempDir
    Path folder;

    private final StringWriter answers = new StringWriter();
    private final StringWriter messages = new StringWriter();

    private int run(String... arguments) {
        return Isohume.run(new PrintWriter(answers), new PrintWriter(messages), arguments);
    }

    @ParameterizedTest
    @ValueSource(strings = {"modbus-tcp", "modbus-rtu", "text", "scpi", "mqtt", "http-json"})
    void a_new_description_names_its_protocol(String protocol) {
        assertEquals(0, run("device", "new", protocol));
        assertTrue(answers.toString().contains("protocol: " + protocol + "\n"), answers::toString);
    }

    @Test
    void a_description_that_is_there_is_kept() throws IOException {
        Path file = folder.resolve("probe.yaml");
        assertEquals(0, run("device", "new", "text", "--out", file.toString()));
        String first = Files.readString(file);
        assertEquals(1, run("device", "new", "scpi", "--out", file.toString()));
        assertEquals(first, Files.readString(file));
        assertEquals(2, run("device", "new", "semaphore"));
        assertTrue(messages.toString().contains("modbus-rtu"), messages::toString);
    }

    @Test
    void a_good_device_is_shown_with_its_bytes_and_nothing_is_wrong() throws IOException {
        try (SimulatedBench bench = bench()) {
            assertEquals(
                    0, run("device", "try", text(bench.speak(Spoken.TEXT, 0)), "--seconds", "1"), messages::toString);
        }
        String said = answers.toString();
        assertTrue(said.contains("> 3F 31 31 0D 0A  # ?11.."), said);
        assertTrue(said.contains("temperature 2"), said);
        assertTrue(said.contains("Nothing is wrong."), said);
    }

    @Test
    void a_device_that_is_not_there_is_told_in_plain_words() throws IOException {
        int port;
        try (SimulatedBench bench = bench()) {
            port = bench.speak(Spoken.TEXT, 0);
        }
        assertEquals(1, run("device", "try", text(port), "--seconds", "1", "--json"));
        JsonNode tree = new ObjectMapper().readTree(answers.toString());
        assertEquals("P-300", tree.at("/device").asText());
        assertTrue(tree.at("/findings/0").asText().contains("look at the cable"), tree::toString);
    }

    private static SimulatedBench bench() {
        return SimulatedBench.start(BenchParameters.portable(), 1, Instant.parse("2026-03-02T08:00:00Z"), 0);
    }

    private String text(int port) throws IOException {
        assertEquals(0, run("device", "new", "text"));
        String scaffold = answers.toString();
        answers.getBuffer().setLength(0);
        Path file = folder.resolve("probe.yaml");
        return Files.writeString(
                        file,
                        scaffold.replace(
                                "serial: {path: /dev/ttyUSB0, baud: 9600} ",
                                "tcp: {host: 127.0.0.1, port: " + port + "} "))
                .toString();
    }
}
