// SPDX-License-Identifier: Apache-2.0
package isohume.station.notice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import isohume.device.sheet.Sheet;
import isohume.device.sheet.SheetError;
import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.MemoryJournal;
import isohume.journal.StreamName;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.run.watch.Fault;
import isohume.run.watch.Measure;
import isohume.run.watch.Policy;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NotifierTest {
    private static final StreamName RUN = new StreamName("run", "R-1");
    private static final StreamName NOTICES = new StreamName("notice", "R-1");
    private static final Set<Occasion> ALL = Set.of(Occasion.values());

    private final Journal journal = new MemoryJournal(() -> Instant.parse("2026-03-02T08:00:00Z"));

    private Entry noticed() {
        return journal.append(
                RUN,
                RunNotation.encode(new RunFact.Noticed(
                        Fault.DOOR_OPEN,
                        "chamber",
                        Instant.EPOCH,
                        "the door is open; rm -rf $HOME `date`",
                        new Policy(Duration.ZERO, Measure.HOLD))));
    }

    @Test
    void a_program_on_this_machine_gets_the_notice_and_its_answer_is_kept() throws Exception {
        BlockingQueue<String> got = new LinkedBlockingQueue<>();
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            got.add(new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
            exchange.sendResponseHeaders(204, -1);
            exchange.close();
        });
        server.start();
        URI address = URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/tell");
        try (Notifier notifier = new Notifier(List.of(new Hook.Webhook(address, ALL)), journal)) {
            notifier.hear(noticed());
            String told = String.valueOf(got.poll(20, TimeUnit.SECONDS));
            assertTrue(told.contains("\"what\":\"chamber tells of an open door: the door is open"), told);
        } finally {
            server.stop(0);
        }
        assertTrue(outcome().contains("status 204"), outcome());
    }

    @Test
    void a_command_gets_the_message_as_one_argument_that_no_shell_reads() {
        String java = ProcessHandle.current().info().command().orElse("java");
        // a Java that is given a file which is not there says so and ends with 1
        try (Notifier notifier = new Notifier(List.of(new Hook.Command(List.of(java, "-cp", "."), ALL)), journal)) {
            notifier.hear(noticed());
        }
        assertTrue(outcome().contains("exit code 1"), outcome());
    }

    @Test
    void a_command_that_is_not_there_is_written_down_and_nothing_more_comes_of_it() {
        try (Notifier notifier = new Notifier(List.of(new Hook.Command(List.of("no-such-program"), ALL)), journal)) {
            notifier.hear(noticed());
        }
        assertTrue(outcome().contains("failed"), outcome());
    }

    @Test
    void what_a_hook_is_not_about_is_not_told() {
        Hook hook = new Hook.Command(List.of("no-such-program"), Set.of(Occasion.ENDED));
        try (Notifier notifier = new Notifier(List.of(hook), journal)) {
            notifier.hear(noticed());
        }
        assertEquals(0, journal.last(NOTICES));
    }

    private String outcome() {
        return journal.read(NOTICES, 0, 1).getFirst().fact().text();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://192.0.2.7/x",
                "https://127.0.0.1/x",
                "http://localhost.example.org/",
                "http://127.0.0.1@192.0.2.7/",
                "http://localhost/x",
                "file:///etc/passwd"
            })
    void an_address_that_is_not_surely_on_this_machine_is_refused(String address) {
        Sheet sheet = Sheet.parse("webhook: \"" + address + "\"", "bench.yaml");
        SheetError refused =
                assertThrows(SheetError.class, () -> HookSheet.read(sheet).size());
        assertTrue(String.valueOf(refused.getMessage()).contains("127.0.0.1:9000"), refused.getMessage());
    }

    @Test
    void both_kinds_are_read() throws IOException {
        Sheet sheet = Sheet.parse(
                "{command: [tell, -x], webhook: \"http://[::1]:9000/a\", about: [ended, over]}", "bench.yaml");
        assertEquals(
                List.of(
                        new Hook.Command(List.of("tell", "-x"), Set.of(Occasion.ENDED, Occasion.OVER)),
                        new Hook.Webhook(URI.create("http://[::1]:9000/a"), Set.of(Occasion.ENDED, Occasion.OVER))),
                HookSheet.read(sheet));
    }
}
