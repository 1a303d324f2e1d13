// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells a program that serves a run what a display shows, from a terminal. */
@Command(
        name = "enter",
        description =
                "Types what a display shows into the run that a program on this machine serves. Without CHANNEL it"
                        + " says what is wanted.",
        mixinStandardHelpOptions = true)
@SuppressWarnings("NullAway.Init") // picocli fills the fields
final class EnterCommand implements Callable<Integer> {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final int TAKEN = 201;
    private static final int FOUND = 200;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "CHANNEL", description = "such as H-7/relative_humidity")
    private @Nullable String channel;

    @Parameters(index = "1", arity = "0..1", paramLabel = "SHOWN", description = "digit for digit as it is shown")
    private @Nullable String shown;

    @Option(names = "--by", paramLabel = "NAME", description = "who reads")
    private @Nullable String operator;

    @Option(names = "--confirm", description = "take a figure that was questioned")
    private boolean confirmed;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "8640",
            description = "port at which the pages are served: ${DEFAULT-VALUE}")
    private int port;

    @Override
    public Integer call() throws IOException, InterruptedException {
        URI address = URI.create("http://127.0.0.1:" + Address.port(spec, port) + "/api/bench/entries");
        if (channel == null) {
            return told(ask(HttpRequest.newBuilder(address).GET()));
        }
        if (shown == null || operator == null) {
            throw new ParameterException(
                    spec.commandLine(), "a reading needs SHOWN, what the display shows, and --by NAME, who reads it");
        }
        BodyPublisher body = BodyPublishers.ofString(JSON.createObjectNode()
                .put("channel", channel)
                .put("shown", shown)
                .put("operator", operator)
                .put("confirmed", confirmed)
                .toString());
        return told(ask(HttpRequest.newBuilder(address)
                .header("Content-Type", "application/json")
                .POST(body)));
    }

    private HttpResponse<String> ask(HttpRequest.Builder request) throws IOException, InterruptedException {
        try (HttpClient client = HttpClient.newHttpClient()) {
            return client.send(request.timeout(PATIENCE).build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException nobody) {
            throw new IOException(
                    "nothing answers at port " + port + " of this machine; start ./isohume serve, or name its --port",
                    nobody);
        }
    }

    private int told(HttpResponse<String> answer) throws IOException {
        JsonNode said = JSON.readTree(answer.body());
        if (answer.statusCode() == FOUND || answer.statusCode() == TAKEN) {
            list(said);
            return Isohume.DONE;
        }
        PrintWriter messages = spec.commandLine().getErr();
        messages.println(said.path("why").asText(said.path("what").asText("not taken")));
        if (said.path("question").asBoolean()) {
            String suggestion = said.path("suggestion").asText("");
            messages.println("If it is right, say so with --confirm"
                    + (suggestion.isEmpty() || said.path("suggestion").isNull()
                            ? "."
                            : "; or was it " + suggestion + "?"));
        }
        return Isohume.FAILED;
    }

    private void list(JsonNode state) {
        PrintWriter out = spec.commandLine().getOut();
        out.println("run " + state.path("run").asText() + ", point "
                + state.path("point").asInt() + ", " + state.path("phase").asText());
        TextTable table = new TextTable(List.of("channel", "unit", ">step", ">entries", "wanted"));
        for (JsonNode one : state.path("channels")) {
            table.row(List.of(
                    one.path("channel").asText(),
                    one.path("unit").asText(),
                    one.path("resolution").asText(),
                    one.path("standing").asInt() + " of " + one.path("of").asInt(),
                    one.path("wanted").asBoolean()
                            ? "now"
                            : one.path("left_out").asBoolean() ? "left out" : "no"));
        }
        table.write(out);
    }
}
