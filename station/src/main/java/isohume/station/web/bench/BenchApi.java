// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import isohume.station.web.Desk;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The bench's data. */
@Path("/api/bench")
@Tag(name = "bench")
@Produces(MediaType.APPLICATION_JSON)
public final class BenchApi {
    private final Following following;
    private final Desk desk;

    BenchApi(Following following, Desk desk) {
        this.following = following;
        this.desk = desk;
    }

    @GET
    @Operation(summary = "How the run on the bench, or the last one there, stands")
    public RunState bench() {
        return desk.current()
                .flatMap(run -> RunState.of(following.run(run), desk))
                .orElseThrow(() -> new NotFoundException("no run has been started on this bench"));
    }
}
