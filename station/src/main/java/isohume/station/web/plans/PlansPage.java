// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.plans;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import isohume.station.plan.Shelf;
import isohume.station.web.Desk;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.jspecify.annotations.Nullable;

/** Plans and their editor. Everything works with plain forms; scripts only add dragging and checking while one types. */
@Path("/plans")
@Produces(MediaType.TEXT_HTML)
public final class PlansPage {
    private final Desk desk;

    PlansPage(Desk desk) {
        this.desk = desk;
    }

    @CheckedTemplate(basePath = "plans", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance plans(List<Shelf.Listed> plans);

        static native TemplateInstance plan(PlanView view, String kept);

        static native TemplateInstance plan$editor(PlanView view);
    }

    @GET
    public TemplateInstance list() {
        return Templates.plans(desk.plans().list());
    }

    @GET
    @Path("{name}")
    public TemplateInstance plan(
            @RestPath String name, @RestQuery @Nullable String kept, @RestQuery @Nullable String axis) {
        return Templates.plan(editing(name).shown("dew".equals(axis)), kept == null ? "" : kept);
    }

    /** One step of editing; with {@code do=keep} the plan is kept, and its own page follows. */
    @POST
    @Path("{name}")
    public Response edit(
            @RestPath String name,
            MultivaluedMap<String, String> sent,
            @HeaderParam("HX-Request") @Nullable String part) {
        Editing editing = editing(name);
        PlanForm form = PlanForm.from(sent);
        if ("keep".equals(sent.getFirst("do")) && editing.trouble(form).isEmpty()) {
            String kept = editing.keep(form);
            String address = "/plans/" + java.net.URLEncoder.encode(kept, StandardCharsets.UTF_8) + "?kept="
                    + java.net.URLEncoder.encode(kept, StandardCharsets.UTF_8);
            return part == null
                    ? Response.seeOther(URI.create(address)).build()
                    : Response.noContent().header("HX-Redirect", address).build();
        }
        PlanView view = editing.edited(form, sent);
        return Response.ok(part == null ? Templates.plan(view, "") : Templates.plan$editor(view))
                .build();
    }

    private Editing editing(String name) {
        Shelf.Plan plan = desk.plans().plan(name).orElseThrow(NotFoundException::new);
        return new Editing(desk.plans(), plan);
    }
}
