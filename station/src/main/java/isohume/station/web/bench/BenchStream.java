// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import io.smallrye.mutiny.Multi;
import isohume.station.web.LiveParts;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.Sse;
import java.util.Optional;

/** The live parts of the bench. */
@Path("/bench/live")
public final class BenchStream {
    private final Following following;

    BenchStream(Following following) {
        this.following = following;
    }

    @GET
    @Produces(MediaType.SERVER_SENT_EVENTS)
    public Multi<OutboundSseEvent> live(@Context Sse sse) {
        return LiveParts.stream(sse, this::look);
    }

    private String look(LiveParts parts) {
        Optional<BenchView> view = following.current();
        view.ifPresent(v -> {
            parts.part("live", BenchPage.Templates.bench$live(v).render());
            parts.part("phase", v.word() + (v.old() ? ", figures are old" : ""));
            parts.part("orders", BenchPage.Templates.bench$orders(v).render());
            parts.part("wall", BenchPage.Templates.wall$pair(v).render());
        });
        return view.map(v -> v.run() + " " + v.taken()).orElse("- 0");
    }
}
