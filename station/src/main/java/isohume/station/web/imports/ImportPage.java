// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.imports;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import isohume.device.export.Understanding;
import isohume.device.export.Understanding.Understood;
import isohume.station.imported.Imported;
import isohume.station.imported.Intake;
import isohume.station.web.Clockface;
import isohume.station.web.Desk;
import isohume.station.web.NotNow;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** From an exported file to readings that are kept: choose it, answer what it leaves open, look at it, keep it. */
@Path("/import")
@Produces(MediaType.TEXT_HTML)
public final class ImportPage {
    private final Desk desk;
    private final Clockface clock;

    ImportPage(Desk desk) {
        this.desk = desk;
        this.clock = new Clockface(desk.zone());
    }

    @CheckedTemplate(basePath = "imports", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance begin(boolean possible, List<Imported> imported);

        static native TemplateInstance look(ImportView view);
    }

    @GET
    public TemplateInstance begin() {
        return Templates.begin(
                desk.intake().isPresent(), desk.intake().map(Intake::all).orElse(List.of()));
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response receive(@RestForm("file") FileUpload file) throws IOException {
        String hash = intake().receive(file.uploadedFile());
        return Response.seeOther(URI.create("/import/" + hash + "?" + new Given(file.fileName(), Map.of()).query()))
                .build();
    }

    @GET
    @Path("{hash}")
    public TemplateInstance look(@RestPath String hash, @Context UriInfo uri) {
        Given given = Given.from(uri.getQueryParameters());
        return Templates.look(ImportView.of(hash, given, read(hash, given), intake().all(), clock));
    }

    @GET
    @Path("{hash}/profile.yaml")
    @Produces("application/yaml")
    public Response profile(@RestPath String hash, @Context UriInfo uri) {
        Given given = Given.from(uri.getQueryParameters());
        if (!(read(hash, given) instanceof Understood understood)) {
            throw new NotNow("The file is not understood yet; answer its questions first.");
        }
        return Response.ok(understood.profile().document())
                .header("Content-Disposition", "attachment; filename=\"profile.yaml\"")
                .build();
    }

    @POST
    @Path("{hash}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response keep(@RestPath String hash, MultivaluedMap<String, String> fields) throws IOException {
        Given given = Given.from(fields);
        if (!(read(hash, given) instanceof Understood understood)) {
            throw new NotNow("The file is not understood yet; answer its questions first.");
        }
        String operator = fields.getOrDefault("operator", List.of("")).getFirst();
        Imported unused = intake().keep(hash, given.name(), understood, operator);
        return Response.seeOther(URI.create("/import/" + hash + "/clock")).build();
    }

    private Understanding read(String hash, Given given) {
        return intake().read(hash, given.name(), given.answers()).orElseThrow(NotFoundException::new);
    }

    private Intake intake() {
        return desk.intake().orElseThrow(NotFoundException::new);
    }
}
