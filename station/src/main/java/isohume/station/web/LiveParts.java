// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import io.smallrye.mutiny.Multi;
import io.smallrye.mutiny.infrastructure.Infrastructure;
import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.Sse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The live parts of a page over one connection. Once a second a {@code beat}, by which a page knows that it is still
 * connected, and before it whatever part has changed, as HTML.
 */
public final class LiveParts {
    private static final Duration BEAT = Duration.ofSeconds(1);

    private final Sse sse;
    private final Map<String, String> sent = new HashMap<>();
    private final List<OutboundSseEvent> events = new ArrayList<>();

    private LiveParts(Sse sse) {
        this.sse = sse;
    }

    /**
     * Sends until nobody listens any more.
     *
     * @param look says what each part shows now, and answers with what the beat carries
     */
    public static Multi<OutboundSseEvent> stream(Sse sse, Function<LiveParts, String> look) {
        LiveParts parts = new LiveParts(sse);
        return Multi.createFrom()
                .ticks()
                .every(BEAT)
                .onOverflow()
                .drop() // a slow reader misses beats; it gets the newest state with the next one
                .emitOn(Infrastructure.getDefaultWorkerPool())
                .onItem()
                .transformToIterable(tick -> parts.next(look));
    }

    private List<OutboundSseEvent> next(Function<LiveParts, String> look) {
        events.clear();
        String beat = look.apply(this);
        events.add(event("beat", beat));
        return List.copyOf(events);
    }

    /** What a part shows now; it is sent if that has changed. */
    public void part(String name, String html) {
        if (!html.equals(sent.put(name, html))) {
            events.add(event(name, html));
        }
    }

    private OutboundSseEvent event(String name, String data) {
        return sse.newEventBuilder().name(name).data(data).build();
    }
}
