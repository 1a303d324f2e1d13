// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PipedReader;
import java.io.PipedWriter;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SimulateCommandTest {
    @TempDir
    Path folder;

    @Test
    void the_bench_answers_at_the_address_that_is_printed_until_it_is_stopped() throws Exception {
        AtomicInteger code = new AtomicInteger(-1);
        PipedReader printed = new PipedReader(1 << 16);
        PrintWriter answers = new PrintWriter(new PipedWriter(printed), true);
        Thread running = Thread.ofPlatform()
                .start(() -> code.set(Isohume.run(
                        answers, new PrintWriter(new StringWriter()), "simulate", "--port", "0", "--json")));
        JsonNode tree;
        try (var parser = new ObjectMapper().createParser(printed)) {
            tree = parser.readValueAsTree();
        }
        assertEquals(2, tree.get("devices").get(1).get("unit").intValue());
        assertEquals("mirror", tree.get("devices").get(1).get("id").textValue());
        try (Socket socket =
                new Socket(InetAddress.getLoopbackAddress(), tree.get("port").intValue())) {
            assertTrue(socket.isConnected());
        }
        running.interrupt();
        assertTrue(running.join(Duration.ofSeconds(20)));
        assertEquals(0, code.get());
    }

    @Test
    void a_key_that_is_not_known_is_refused_with_its_place() throws IOException {
        assertRefused(
                "streams:\n  leak-flw: 0.05\n", "bench.yaml:2:3: leak-flw is not known here; did you mean leak-flow?");
    }

    @Test
    void a_value_for_which_the_model_says_nothing_is_refused() throws IOException {
        assertRefused("enclosure:\n  volume-litres: 0\n", "chamber volume must be from 0.5 to 200.0 L, was 0.0 L");
    }

    @Test
    void an_instrument_that_is_not_on_the_bench_is_refused() throws IOException {
        assertRefused("transmitters:\n  - id: D-1\n    scatter: 0\n", "one of A-1042, B-2077, C-3310");
    }

    private void assertRefused(String yaml, String expected) throws IOException {
        Path file = folder.resolve("bench.yaml");
        Files.writeString(file, yaml);
        Said said = Said.by("simulate", "--bench", file);
        assertEquals(1, said.code());
        assertTrue(said.messages().contains(expected), said.messages());
        assertFalse(said.messages().contains("at java."), said.messages());
    }

    @Test
    void a_speed_or_a_port_beyond_reason_is_wrong_use() {
        assertEquals(2, Said.by("simulate", "--port", "0", "--speed", "0").code());
        assertEquals(2, Said.by("simulate", "--port", "70000").code());
    }

    @Test
    void a_port_in_use_is_said_with_what_to_do() throws IOException {
        try (var taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            Said said = Said.by("simulate", "--port", taken.getLocalPort());
            assertEquals(1, said.code());
            assertTrue(said.messages().contains("choose another port"), said.messages());
        }
    }
}
