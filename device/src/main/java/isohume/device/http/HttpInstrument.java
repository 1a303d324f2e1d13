// SPDX-License-Identifier: Apache-2.0
package isohume.device.http;

import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.driver.Described;
import isohume.device.json.JsonCodec;
import isohume.device.line.Deadline;
import isohume.device.line.Tap;
import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.ProtocolException;
import java.net.http.HttpClient;
import java.net.http.HttpConnectTimeoutException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;

/** Gets the document anew for each read. */
final class HttpInstrument extends Described {
    private final HttpDescription description;
    private final Tap tap;
    private final InstantSource clock;
    private final HttpClient client = HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .followRedirects(HttpClient.Redirect.NEVER)
            .proxy(HttpClient.Builder.NO_PROXY)
            .build();
    private volatile boolean closed;

    HttpInstrument(HttpDescription description, Tap tap, InstantSource clock) {
        super(description);
        this.description = description;
        this.tap = tap;
        this.clock = clock;
    }

    @Override
    public List<Reading> read() {
        Instant at = clock.instant();
        if (closed) {
            return description.absent(at, Trouble.UNPLUGGED, "the connection to " + description.place() + " is closed");
        }
        Deadline deadline = Deadline.in(description.timeLimit());
        AtomicBoolean begun = new AtomicBoolean();
        CompletableFuture<HttpResponse<byte[]>> response = CompletableFuture.supplyAsync(
                        this::requirePrivate, IN_PASSING)
                .thenCompose(fine -> send(deadline, begun));
        try {
            return readings(
                    deadline.<HttpResponse<byte[]>, Exception>get(
                            left -> response.get(Math.max(1, left), TimeUnit.MILLISECONDS)),
                    at);
        } catch (TimeoutException e) {
            boolean cancelled = response.cancel(true);
            return late(begun.get() && cancelled, deadline, at);
        } catch (ExecutionException e) {
            return failed(e, begun.get(), deadline, at);
        } catch (Exception e) { // of the signature of get only
            return description.absent(at, Trouble.GARBLED, String.valueOf(e.getMessage()));
        }
    }

    private static final java.util.concurrent.Executor IN_PASSING =
            task -> Thread.ofPlatform().daemon().name("look up a host").start(task);

    /** Looked up anew each time: what a name means may change. */
    private boolean requirePrivate() {
        String host = description.address().getHost().replaceAll("[\\[\\]]", "");
        try {
            for (InetAddress address : InetAddress.getAllByName(host)) {
                if (!address.isLoopbackAddress()
                        && !address.isSiteLocalAddress()
                        && !address.isLinkLocalAddress()
                        && (address.getAddress()[0] & 0xFE) != 0xFC) {
                    throw new IllegalStateException(host + " is " + address.getHostAddress()
                            + ", which is neither this machine nor on a private network; nothing is asked of it");
                }
            }
            return true;
        } catch (java.net.UnknownHostException e) {
            throw new IllegalStateException("no machine of the name " + host + " is known", e);
        }
    }

    private CompletableFuture<HttpResponse<byte[]>> send(Deadline deadline, AtomicBoolean begun) {
        HttpRequest request = HttpRequest.newBuilder(description.address())
                .timeout(java.time.Duration.ofMillis(Math.max(1, deadline.millisLeft())))
                .header("Accept", "application/json")
                .build();
        tap.moved(
                description.place(), true, ("GET " + description.address().getPath()).getBytes(StandardCharsets.UTF_8));
        return client.sendAsync(request, info -> {
            begun.set(true);
            return new Bounded(JsonCodec.LONGEST);
        });
    }

    private List<Reading> readings(HttpResponse<byte[]> response, Instant at) {
        tap.moved(description.place(), false, response.body());
        if (response.statusCode() != 200) {
            return description.absent(
                    at,
                    Trouble.REFUSED,
                    "the device refused: it answered with the HTTP status " + response.statusCode());
        }
        return description.codec().readings("", response.body(), at);
    }

    private List<Reading> late(boolean begun, Deadline deadline, Instant at) {
        return begun
                ? description.absent(
                        at, Trouble.GARBLED, "the reply broke off: its length was announced, and less came")
                : description.absent(
                        at,
                        Trouble.SILENCE,
                        "no reply from " + description.place() + " within " + deadline.limitText());
    }

    private List<Reading> failed(Throwable trouble, boolean begun, Deadline deadline, Instant at) {
        Throwable root = trouble;
        while (root.getCause() != null && !(root instanceof IOException || root instanceof IllegalStateException)) {
            root = root.getCause();
        }
        String text = String.valueOf(root.getMessage());
        return switch (root) {
            case HttpConnectTimeoutException e -> unplugged(at, "nobody answered in time");
            case HttpTimeoutException e -> late(begun, deadline, at);
            case ConnectException e ->
                unplugged(at, "it refused the connection; is the device on, and the port right?");
            case IllegalStateException e -> unplugged(at, text);
            case ProtocolException e ->
                description.absent(at, Trouble.GARBLED, "something that is no HTTP came: " + text);
            case IOException e
            when begun || text.contains("parsing") || text.contains("status line") ->
                description.absent(at, Trouble.GARBLED, "a reply that is not whole came: " + text);
            default -> unplugged(at, "the device closed it");
        };
    }

    private List<Reading> unplugged(Instant at, String why) {
        return description.absent(at, Trouble.UNPLUGGED, "no connection to " + description.place() + ": " + why);
    }

    @Override
    public void close() {
        closed = true;
        client.shutdownNow();
    }
}
