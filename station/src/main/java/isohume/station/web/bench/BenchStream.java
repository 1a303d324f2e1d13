// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import io.smallrye.mutiny.Multi;
import io.smallrye.mutiny.infrastructure.Infrastructure;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.Sse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The live parts of the bench. Once a second a {@code beat}, by which a page knows that it is still connected, and
 * before it whatever part has changed, as HTML.
 */
@Path("/bench/live")
public final class BenchStream {
    private static final Duration BEAT = Duration.ofSeconds(1);
    private final Following following;

    BenchStream(Following following) {
        this.following = following;
    }

    @GET
    @Produces(MediaType.SERVER_SENT_EVENTS)
    public Multi<OutboundSseEvent> live(@Context Sse sse) {
        Map<String, String> sent = new HashMap<>();
        return Multi.createFrom()
                .ticks()
                .every(BEAT)
                .onOverflow()
                .drop() // a slow reader misses beats; it gets the newest state with the next one
                .emitOn(Infrastructure.getDefaultWorkerPool())
                .onItem()
                .transformToIterable(tick -> events(sse, sent));
    }

    private List<OutboundSseEvent> events(Sse sse, Map<String, String> sent) {
        Optional<BenchView> view = following.current();
        List<OutboundSseEvent> events = new ArrayList<>();
        view.ifPresent(v -> {
            part("live", BenchPage.Templates.bench$live(v).render(), sse, sent, events);
            part("phase", v.word() + (v.old() ? ", figures are old" : ""), sse, sent, events);
            part("orders", BenchPage.Templates.bench$orders(v).render(), sse, sent, events);
            part("wall", BenchPage.Templates.wall$pair(v).render(), sse, sent, events);
        });
        events.add(event(sse, "beat", view.map(v -> v.run() + " " + v.taken()).orElse("- 0")));
        return events;
    }

    private static void part(
            String name, String html, Sse sse, Map<String, String> sent, List<OutboundSseEvent> events) {
        if (!html.equals(sent.put(name, html))) {
            events.add(event(sse, name, html));
        }
    }

    private static OutboundSseEvent event(Sse sse, String name, String data) {
        return sse.newEventBuilder().name(name).data(data).build();
    }
}
