// SPDX-License-Identifier: Apache-2.0
package isohume.station;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program as it is shipped, in a process of its own. */
final class RunningProgram implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("http://\\S+/");
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final Process process;
    private final CompletableFuture<String> address = new CompletableFuture<>();
    private final Queue<String> said = new ConcurrentLinkedQueue<>();

    private RunningProgram(Process process) {
        this.process = process;
        Thread.ofPlatform().daemon().start(this::listen);
    }

    static RunningProgram with(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "--enable-native-access=ALL-UNNAMED",
                "-jar",
                System.getProperty("isohume.jar", "target/isohume.jar")));
        command.addAll(List.of(arguments));
        return new RunningProgram(
                new ProcessBuilder(command).redirectErrorStream(true).start());
    }

    /** Where tests leave pictures and files. */
    static Path output(String folder) throws IOException {
        return Files.createDirectories(Path.of(System.getProperty("isohume.output", "target"), folder));
    }

    private void listen() {
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                said.add(line);
                Matcher found = ADDRESS.matcher(line);
                if (found.find()) {
                    address.complete(found.group());
                }
            }
        } catch (IOException gone) {
            said.add(String.valueOf(gone.getMessage()));
        }
        address.completeExceptionally(new IllegalStateException("the program ended: " + said()));
    }

    /** The first page's address, as soon as the program has printed it. */
    String address() throws Exception {
        return address.get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
    }

    String said() {
        return String.join("\n", said);
    }

    byte[] get(String path) throws Exception {
        return answer(path, HttpRequest.newBuilder().GET());
    }

    /** Sends JSON. */
    String post(String path, String json) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder()
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json));
        return new String(answer(path, request), StandardCharsets.UTF_8);
    }

    private byte[] answer(String path, HttpRequest.Builder request) throws Exception {
        try (HttpClient client = HttpClient.newHttpClient()) {
            HttpResponse<byte[]> response = client.send(
                    request.uri(URI.create(address()).resolve(path))
                            .timeout(PATIENCE)
                            .build(),
                    HttpResponse.BodyHandlers.ofByteArray());
            if (response.statusCode() != 200) {
                throw new IOException(path + " answered " + response.statusCode() + ": "
                        + new String(response.body(), StandardCharsets.UTF_8));
            }
            return response.body();
        }
    }

    String text(String path) throws Exception {
        return new String(get(path), StandardCharsets.UTF_8);
    }

    int exitCode() throws InterruptedException {
        if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
            throw new IllegalStateException("the program did not end: " + said());
        }
        return process.exitValue();
    }

    /** As a power cut would: no farewell. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(20, TimeUnit.SECONDS)) {
                kill();
            }
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
