// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.devices;

import io.smallrye.mutiny.Multi;
import isohume.station.trial.Tryout;
import isohume.station.web.Clockface;
import isohume.station.web.Desk;
import isohume.station.web.LiveParts;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.Sse;
import org.jboss.resteasy.reactive.RestPath;

/** The live parts of a trial. */
@Path("/devices/trials/{number}/live")
public final class TrialStream {
    private final Desk desk;
    private final Clockface clock;

    TrialStream(Desk desk) {
        this.desk = desk;
        this.clock = new Clockface(desk.zone());
    }

    @GET
    @Produces(MediaType.SERVER_SENT_EVENTS)
    public Multi<OutboundSseEvent> live(@RestPath int number, @Context Sse sse) {
        Tryout tryout = desk.tryouts().flatMap(all -> all.find(number)).orElseThrow(NotFoundException::new);
        return LiveParts.stream(sse, parts -> look(tryout, parts));
    }

    private String look(Tryout tryout, LiveParts parts) {
        TrialView view = TrialView.of(tryout, clock);
        parts.part("state", DevicesPage.Templates.trial$state(view).render());
        parts.part("found", DevicesPage.Templates.trial$found(view).render());
        parts.part("bytes", DevicesPage.Templates.trial$bytes(view).render());
        return "- " + view.reads();
    }
}
