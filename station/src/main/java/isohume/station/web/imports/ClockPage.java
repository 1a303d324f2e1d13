// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.imports;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import isohume.device.export.LoggedTable;
import isohume.result.alignment.Alignment.Found;
import isohume.station.imported.Aligned;
import isohume.station.imported.Intake;
import isohume.station.plan.Shelf;
import isohume.station.web.Clockface;
import isohume.station.web.Desk;
import isohume.station.web.NotNow;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** An imported file laid over the reference's, with the offset that was found; a person confirms it. */
@Path("/import/{hash}/clock")
@Produces(MediaType.TEXT_HTML)
public final class ClockPage {
    private final Desk desk;

    ClockPage(Desk desk) {
        this.desk = desk;
    }

    @CheckedTemplate(basePath = "imports", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance clock(ClockView view);
    }

    /**
     * The page as it is shown.
     *
     * @param with the reference's hash; empty before one is chosen
     * @param plan the plan's name; empty before one is chosen
     * @param usage what of the record would be used at that plan's points
     */
    @TemplateData
    public record ClockView(
            String hash,
            String name,
            String with,
            List<ImportView.Other> others,
            Optional<Overlay> overlay,
            List<Shelf.Listed> plans,
            String plan,
            Optional<UsageView> usage) {}

    @GET
    public TemplateInstance clock(
            @RestPath String hash, @RestQuery Optional<String> with, @RestQuery Optional<String> plan) {
        Intake intake = intake();
        LoggedTable logger = table(intake, hash);
        Optional<LoggedTable> reference = with.map(other -> table(intake, other));
        Optional<Overlay.Made> made = reference.map(other -> Overlay.of(other, logger, desk.zone()));
        Optional<UsageView> usage = plan.filter(name -> !name.isBlank())
                .flatMap(desk.plans()::plan)
                .flatMap(chosen -> made.flatMap(Overlay.Made::found)
                        .map(found -> UsageView.of(chosen.worksheet(), reference.orElseThrow(), logger, found)));
        return Templates.clock(new ClockView(
                hash,
                name(intake, hash),
                with.orElse(""),
                others(intake, hash),
                made.map(Overlay.Made::overlay),
                desk.plans().list().stream().filter(p -> p.trouble().isEmpty()).toList(),
                plan.orElse(""),
                usage));
    }

    private static String name(Intake intake, String hash) {
        return intake.all().stream()
                .filter(i -> i.sha256().equals(hash))
                .findFirst()
                .orElseThrow()
                .name();
    }

    private List<ImportView.Other> others(Intake intake, String hash) {
        Clockface clock = new Clockface(desk.zone());
        return intake.all().stream()
                .filter(i -> !i.sha256().equals(hash))
                .map(i -> ImportView.Other.of(i, clock))
                .distinct()
                .toList();
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response confirm(@RestPath String hash, @RestForm String with, @RestForm String operator) {
        Intake intake = intake();
        Found found = Overlay.of(table(intake, with), table(intake, hash), desk.zone())
                .found()
                .orElseThrow(() -> new NotNow("These records tell no offset; note the two clocks by hand."));
        intake.confirm(
                hash,
                new Aligned(with, found.offset(), found.expanded(), found.drift(), found.how(), operator.strip()));
        return Response.seeOther(URI.create("/import")).build();
    }

    private static LoggedTable table(Intake intake, String hash) {
        return intake.imported(hash).orElseThrow(NotFoundException::new);
    }

    private Intake intake() {
        return desk.intake().orElseThrow(NotFoundException::new);
    }
}
