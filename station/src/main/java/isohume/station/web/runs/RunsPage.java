// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import isohume.quantity.Quantity;
import isohume.result.PointResult;
import isohume.result.Recording;
import isohume.result.Results;
import isohume.station.web.Clockface;
import isohume.station.web.Desk;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.jspecify.annotations.Nullable;

/** Runs, and every number of a run opened. */
@Path("/runs")
@Produces(MediaType.TEXT_HTML)
public final class RunsPage {
    private final Desk desk;
    private final Clockface clock;

    RunsPage(Desk desk) {
        this.desk = desk;
        this.clock = new Clockface(desk.zone());
    }

    @CheckedTemplate(basePath = "runs", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance runs(List<RunRow> runs);

        static native TemplateInstance run(RunView view);

        static native TemplateInstance budget(BudgetView view);

        static native TemplateInstance budget$opened(BudgetView view);

        static native TemplateInstance readings(ReadingsView view);

        static native TemplateInstance facts(FactsView view);
    }

    @GET
    public TemplateInstance list() {
        return Templates.runs(desk.runs().stream().map(r -> RunRow.of(r, clock)).toList());
    }

    @GET
    @Path("{run}")
    public TemplateInstance run(@RestPath String run) {
        Desk.Summary summary = summary(run);
        return Templates.run(RunView.of(summary, desk.results(run), desk.documents(run), clock));
    }

    @GET
    @Path("{run}/budget/{instrument}/{quantity}/{point}")
    public TemplateInstance budget(
            @RestPath String run,
            @RestPath String instrument,
            @RestPath String quantity,
            @RestPath int point,
            @HeaderParam("HX-Request") @Nullable String part) {
        Results results = results(run);
        PointResult result = results.of(instrument).stream()
                .filter(p -> p.quantity() == quantity(quantity) && p.point().number() == point)
                .findFirst()
                .orElseThrow(NotFoundException::new);
        BudgetView view = BudgetView.of(run, result);
        return part == null ? Templates.budget(view) : Templates.budget$opened(view);
    }

    @GET
    @Path("{run}/readings/{point}")
    public TemplateInstance readings(@RestPath String run, @RestPath int point) {
        Recording recording = results(run).recordings().stream()
                .filter(r -> r.point().number() == point)
                .findFirst()
                .orElseThrow(NotFoundException::new);
        return Templates.readings(ReadingsView.of(run, recording, clock));
    }

    @GET
    @Path("{run}/facts")
    public TemplateInstance facts(@RestPath String run, @RestQuery @DefaultValue("0") long after) {
        Desk.Summary summary = summary(run);
        return Templates.facts(FactsView.of(summary.run(), desk, Math.max(0, after), clock));
    }

    private Desk.Summary summary(String run) {
        return desk.runs().stream().filter(s -> s.run().equals(run)).findFirst().orElseThrow(NotFoundException::new);
    }

    private Results results(String run) {
        return desk.results(run).orElseThrow(NotFoundException::new);
    }

    private static Quantity quantity(String key) {
        try {
            return Quantity.ofKey(key);
        } catch (IllegalArgumentException unknown) {
            throw new NotFoundException(unknown);
        }
    }
}
