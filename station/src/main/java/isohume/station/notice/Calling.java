// SPDX-License-Identifier: Apache-2.0
package isohume.station.notice;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.ProcessBuilder.Redirect;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Calls one hook and says in words how that went. Ends within its time limit; never throws but for an interrupt. */
final class Calling {
    private final Duration limit;
    private final HttpClient http;

    Calling(Duration limit) {
        this.limit = limit;
        this.http = HttpClient.newBuilder()
                .connectTimeout(limit)
                .followRedirects(HttpClient.Redirect.NEVER)
                .build();
    }

    String call(Hook hook, Notice notice) throws InterruptedException {
        try {
            return switch (hook) {
                case Hook.Command command -> start(command, notice);
                case Hook.Webhook webhook -> post(webhook, notice);
            };
        } catch (IOException | IllegalArgumentException | SecurityException trouble) {
            return "failed: " + trouble.getMessage();
        }
    }

    private String start(Hook.Command command, Notice notice) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(command.words());
        words.add(notice.message());
        Process process = new ProcessBuilder(words)
                .redirectOutput(Redirect.DISCARD)
                .redirectError(Redirect.DISCARD)
                .start();
        try {
            feed(process, notice);
            if (!process.waitFor(limit.toMillis(), TimeUnit.MILLISECONDS)) {
                return "ended after " + limit.toSeconds() + " s without an end of its own";
            }
            return "exit code " + process.exitValue();
        } finally {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
    }

    /** A notice is far smaller than a pipe, so this does not wait for a program that does not read. */
    private static void feed(Process process, Notice notice) {
        try (OutputStream in = process.getOutputStream()) {
            in.write(notice.json().getBytes(StandardCharsets.UTF_8));
        } catch (IOException notWanted) {
            // a program that takes its argument only has closed its input
        }
    }

    private String post(Hook.Webhook webhook, Notice notice) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(webhook.address())
                .timeout(limit)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(notice.json()))
                .build();
        return "status "
                + http.send(request, HttpResponse.BodyHandlers.discarding()).statusCode();
    }
}
