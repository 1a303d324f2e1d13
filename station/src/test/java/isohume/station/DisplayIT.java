// SPDX-License-Identifier: Apache-2.0
package isohume.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A handheld of the simulated bench, read by a program and by a page without scripts. */
class DisplayIT {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String HUMIDITY = "C-3310/relative_humidity";
    private static final Duration PATIENCE = Duration.ofMinutes(2);
    private static final String BOUNDARY = "a-boundary-of-this-test";

    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static RunningProgram program;

    @BeforeAll
    static void begin() throws Exception {
        Path data = Files.createTempDirectory("display");
        program = RunningProgram.with(
                "demo",
                "--plan",
                "../examples/handheld/plan.yaml",
                "--port",
                "0",
                "--speed",
                "100",
                "--data",
                data.toString());
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!state().path("phase").asText().equals("record") && System.nanoTime() < end) {
            Thread.onSpinWait();
        }
    }

    @AfterAll
    static void close() {
        CLIENT.close();
        program.close();
    }

    private static JsonNode state() throws Exception {
        return JSON.readTree(program.text("api/bench/entries"));
    }

    private static HttpResponse<String> post(String path, String type, String body) throws Exception {
        return CLIENT.send(
                HttpRequest.newBuilder(URI.create(program.address()).resolve(path))
                        .header("Content-Type", type)
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private static HttpResponse<String> json(String path, String body) throws Exception {
        return post(path, "application/json", body);
    }

    private static HttpResponse<String> form(String... fields) throws Exception {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i < fields.length; i += 2) {
            body.append("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"" + fields[i] + "\"\r\n\r\n"
                    + fields[i + 1] + "\r\n");
        }
        body.append("--" + BOUNDARY + "--\r\n");
        return post("bench/entries", "multipart/form-data; boundary=" + BOUNDARY, body.toString());
    }

    /** What the simulated display shows, as the page says it. */
    private static String shown() throws Exception {
        Matcher found = Pattern.compile("C-3310 shows (\\S+) % RH").matcher(program.text("bench/entries"));
        assertTrue(found.find(), "the page says what the simulated display shows");
        return found.group(1);
    }

    private static String reading(String text, boolean confirmed) {
        return "{\"channel\":\"" + HUMIDITY + "\",\"shown\":\"" + text + "\",\"operator\":\"Ada\",\"confirmed\":"
                + confirmed + "}";
    }

    @Test
    void a_program_types_is_questioned_confirms_and_takes_back() throws Exception {
        JsonNode wanted = state();
        assertEquals("record", wanted.path("phase").asText());
        assertEquals(HUMIDITY, wanted.path("channels").path(0).path("channel").asText());
        assertEquals("0.1", wanted.path("channels").path(0).path("resolution").asText());

        assertEquals(422, json("api/bench/entries", reading("3 5", false)).statusCode());
        HttpResponse<String> odd = json("api/bench/entries", reading("91.5", false));
        assertEquals(422, odd.statusCode());
        assertTrue(JSON.readTree(odd.body()).path("question").asBoolean(), odd.body());

        HttpResponse<String> confirmed = json("api/bench/entries", reading("91.5", true));
        assertEquals(201, confirmed.statusCode(), confirmed.body());
        JsonNode entries = JSON.readTree(confirmed.body()).path("entries");
        JsonNode entry = entries.path(entries.size() - 1);
        assertEquals("91.5", entry.path("shown").asText());
        assertTrue(entry.path("remark").asText().startsWith("confirmed when asked"), entry.toString());
        assertEquals(entry.path("observed").asLong() + 1, entry.path("number").asLong(), "read for this entry");

        String path = "api/bench/entries/" + entry.path("number").asLong() + "/taken-back";
        HttpResponse<String> back = json(path, "{\"operator\":\"Ada\"}");
        assertEquals(201, back.statusCode());
        assertTrue(back.body().contains("\"taken_back\":\"Ada: mistyped\""), back.body());
        assertEquals(422, json(path, "{\"operator\":\"Ada\"}").statusCode());
        assertEquals(
                422,
                json(
                                "api/bench/entries/left-out",
                                "{\"channel\":\"" + HUMIDITY + "\",\"operator\":\"Ada\",\"reason\":\"\"}")
                        .statusCode());
    }

    @Test
    void a_page_without_scripts_has_keys_that_type() throws Exception {
        String run = state().path("run").asText();
        HttpResponse<String> seven = form("run", run, "channel", HUMIDITY, "shown", "3", "key", "7");
        assertEquals(200, seven.statusCode());
        assertTrue(seven.body().contains("name=\"shown\" value=\"37\""), "the key's digit stands in the field");
        assertTrue(
                form("channel", HUMIDITY, "shown", "37", "key", "back").body().contains("name=\"shown\" value=\"3\""));
        assertTrue(
                form("channel", HUMIDITY, "shown", "3", "key", "sign").body().contains("name=\"shown\" value=\"-3\""));

        HttpResponse<String> refused = form("run", run, "channel", HUMIDITY, "shown", "37", "operator", "Ada");
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("Type every digit"), refused.body());
        HttpResponse<String> taken = form("run", run, "channel", HUMIDITY, "shown", shown(), "operator", "Ada");
        assertEquals(303, taken.statusCode(), taken.body());
        assertEquals(
                422,
                form("run", "another", "channel", HUMIDITY, "shown", shown(), "operator", "Ada")
                        .statusCode());
        assertEquals(
                422,
                form("run", run, "channel", HUMIDITY, "shown", shown(), "operator", " ")
                        .statusCode());
    }

    @Test
    void what_a_person_sees_does_not_tell_what_the_reference_shows() throws Exception {
        assertFalse(program.text("bench/entries").contains("dew_point"), "who knows it reads with it in mind");
    }

    @Test
    void the_entries_are_described_for_programs() throws Exception {
        String described = program.text("api/openapi");
        assertTrue(described.contains("/api/bench/entries/{number}/taken-back"), "taking back");
        assertTrue(described.contains("/api/bench/entries/left-out"), "leaving out");
    }
}
