// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Against a stand-in that answers as the API is described to. */
class EnterCommandTest {
    private static final String STATE = """
            {"run":"R-1","phase":"record","point":2,"channels":[{"channel":"H-7/temperature","unit":"°C",
            "resolution":"0.1","standing":1,"of":5,"wanted":true,"left_out":false}],"entries":[]}""";

    private final HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    private final List<String> asked = new ArrayList<>();

    EnterCommandTest() throws IOException {}

    @AfterEach
    void stop() {
        server.stop(0);
    }

    private int answering(int code, String body) {
        server.createContext("/api/bench/entries", exchange -> {
            asked.add(new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
            byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
            exchange.sendResponseHeaders(code, bytes.length);
            exchange.getResponseBody().write(bytes);
            exchange.close();
        });
        server.start();
        return server.getAddress().getPort();
    }

    @Test
    void without_a_channel_it_says_what_is_wanted() {
        Said said = Said.by("enter", "--port", answering(200, STATE));
        assertEquals(0, said.code(), said.messages());
        assertTrue(said.answer().contains("run R-1, point 2, record"), said.answer());
        assertTrue(said.answer().contains("1 of 5"), said.answer());
    }

    @Test
    void a_reading_is_passed_on_digit_for_digit() {
        Said said = Said.by("enter", "H-7/temperature", "23.0", "--by", "Ada", "--port", answering(201, STATE));
        assertEquals(0, said.code(), said.messages());
        assertEquals(
                List.of(
                        "{\"channel\":\"H-7/temperature\",\"shown\":\"23.0\",\"operator\":\"Ada\",\"confirmed\":false}"),
                asked);
    }

    @Test
    void a_question_is_told_with_what_may_have_been_meant() {
        String question = "{\"why\":\"32.0 lies 9.0 K from the reference.\",\"question\":true,\"suggestion\":\"23.0\"}";
        Said said = Said.by("enter", "H-7/temperature", "32.0", "--by", "Ada", "--port", answering(422, question));
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("9.0 K from the reference"), said.messages());
        assertTrue(said.messages().contains("--confirm; or was it 23.0?"), said.messages());
    }

    @Test
    void a_reading_without_a_name_is_wrong_use() {
        Said said = Said.by("enter", "H-7/temperature", "23.0");
        assertEquals(2, said.code());
        assertTrue(said.messages().contains("--by NAME"), said.messages());
    }

    @Test
    void where_nothing_is_served_the_message_says_so() {
        int port = answering(200, STATE);
        server.stop(0);
        Said said = Said.by("enter", "--port", port);
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("nothing answers at port " + port), said.messages());
    }
}
