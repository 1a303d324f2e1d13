// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import com.fasterxml.jackson.annotation.JsonRawValue;
import isohume.certificate.ReadingsCsv;
import isohume.certificate.ResultsJson;
import isohume.journal.Entry;
import isohume.result.Results;
import isohume.station.web.Desk;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.StringWriter;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Runs, their results, readings, facts and documents, as data. */
@Path("/api/runs")
@Tag(name = "runs")
@Produces(MediaType.APPLICATION_JSON)
public final class RunsApi {
    private static final int MOST_FACTS = 1000;
    private final Desk desk;

    RunsApi(Desk desk) {
        this.desk = desk;
    }

    /** A run in the list. */
    public record Listed(
            String run,
            String plan,
            String bench,
            String operator,
            Instant began,
            String phase,
            int done,
            int points) {}

    /** A fact as it was written, with its place in the chain. */
    public record Written(
            long number, Instant at, int form, @JsonRawValue String fact, String hash) {}

    @GET
    @Operation(summary = "Every run, newest first")
    public List<Listed> list() {
        return desk.runs().stream()
                .map(s -> new Listed(
                        s.run(),
                        s.plan(),
                        s.bench(),
                        s.operator(),
                        s.began(),
                        s.phase().word(),
                        s.done(),
                        s.points()))
                .toList();
    }

    @GET
    @Path("{run}/facts")
    @Operation(summary = "A run's facts in order, behind the number given")
    public List<Written> facts(
            @RestPath String run, @RestQuery @DefaultValue("0") long after, @RestQuery @DefaultValue("100") int most) {
        List<Entry> entries = desk.facts(run, Math.max(0, after), Math.min(MOST_FACTS, Math.max(1, most)));
        return entries.stream()
                .map(e -> new Written(
                        e.number(), e.at(), e.fact().form(), e.fact().text(), e.hash()))
                .toList();
    }

    @GET
    @Path("{run}/results")
    @Operation(summary = "Results of the points recorded so far, unrounded, with their budgets")
    public String results(@RestPath String run) throws IOException {
        StringWriter text = new StringWriter();
        ResultsJson.write(found(run), text);
        return text.toString();
    }

    @GET
    @Path("{run}/readings.csv")
    @Produces("text/csv")
    @Operation(summary = "The paired readings of the points recorded so far")
    public String readings(@RestPath String run) throws IOException {
        StringWriter text = new StringWriter();
        ReadingsCsv.write(found(run), text);
        return text.toString();
    }

    @GET
    @Path("{run}/documents")
    @Operation(summary = "Certificates and files of a run")
    public List<Desk.Document> documents(@RestPath String run) {
        return desk.documents(run);
    }

    @GET
    @Path("{run}/documents/{name}")
    @Produces(MediaType.WILDCARD)
    @Operation(summary = "One of them")
    public Response document(@RestPath String run, @RestPath String name) {
        Desk.Document document = desk.documents(run).stream()
                .filter(d -> d.name().equals(name))
                .findFirst()
                .orElseThrow(NotFoundException::new);
        byte[] bytes = desk.document(run, name).orElseThrow(NotFoundException::new);
        return Response.ok(bytes, document.mediaType())
                .header("Content-Disposition", String.format(Locale.ROOT, "inline; filename=\"%s\"", document.name()))
                .build();
    }

    private Results found(String run) {
        return desk.results(run).orElseThrow(NotFoundException::new);
    }
}
