// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.driver.Devices;
import isohume.device.protocol.Protocol;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;

/** A reply that comes later than the time limit and alone, with no number that would tell what it replies to. */
class LateReplyTest {
    private static final int LIMIT = 600;

    /** Answers the nth question with n: the first after 1.3 time limits, and then each after a quarter of one. */
    private static void answer(ServerSocket listener) {
        try (Socket socket = listener.accept();
                BufferedReader in =
                        new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII))) {
            OutputStream out = socket.getOutputStream();
            int number = 0;
            while (in.readLine() != null) {
                number++;
                LockSupport.parkNanos((number == 1 ? LIMIT * 13 / 10 : LIMIT / 4) * 1_000_000L);
                out.write(("T=" + number + "\r\n").getBytes(StandardCharsets.US_ASCII));
            }
        } catch (IOException hungUp) {
            // the test is over
        }
    }

    @Test
    void is_not_taken_for_the_answer_to_the_next_question() throws IOException {
        try (ServerSocket listener = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                Devices devices = new Devices()) {
            Thread.ofPlatform().daemon().start(() -> answer(listener));
            Instrument probe = devices.open(
                    Protocol.parse(
                            """
                            protocol: text
                            device: p
                            title: P
                            line: {tcp: {host: 127.0.0.1, port: PORT}, timeout-ms: LIMIT}
                            exchanges: [{ask: "T?", reply: 'T=(?<t>[0-9]+)'}]
                            channels: [{name: t, quantity: temperature, group: t, unit: °C, resolution: 1}]
                            """.replace("PORT", String.valueOf(listener.getLocalPort()))
                                    .replace("LIMIT", String.valueOf(LIMIT)),
                            "p.yaml"),
                    () -> Instant.EPOCH);
            Reading.Absent first =
                    assertInstanceOf(Reading.Absent.class, probe.read().getFirst());
            assertEquals(Trouble.SILENCE, first.trouble());
            for (int number = 2; number <= 4; number++) {
                Reading next = probe.read().getFirst();
                Reading.Value value = assertInstanceOf(Reading.Value.class, next, next::toString);
                assertEquals(String.valueOf(number), value.shown().toPlainString());
            }
        }
    }
}
