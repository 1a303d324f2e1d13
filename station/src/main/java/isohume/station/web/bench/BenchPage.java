// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import isohume.run.Order;
import isohume.station.web.Desk;
import isohume.station.web.NotNow;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import org.jspecify.annotations.Nullable;

/** The bench at work, for a person in front of it and for one across the room. */
@Path("/")
public final class BenchPage {
    private static final int LONGEST_REASON = 500;
    private final Following following;
    private final Desk desk;

    BenchPage(Following following, Desk desk) {
        this.following = following;
        this.desk = desk;
    }

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance bench(BenchView view, String asked, String ready);

        static native TemplateInstance bench$live(BenchView view);

        static native TemplateInstance bench$orders(BenchView view);

        static native TemplateInstance wall(BenchView view);

        static native TemplateInstance wall$pair(BenchView view);

        static native TemplateInstance empty(String ready);
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    public TemplateInstance first() {
        return page(null);
    }

    @GET
    @Path("bench")
    @Produces(MediaType.TEXT_HTML)
    public TemplateInstance page(@RestQuery @Nullable String asked) {
        String known = order(asked).map(BenchPage::word).orElse("");
        return following
                .current()
                .map(view -> Templates.bench(view, known, ready()))
                .orElseGet(() -> Templates.empty(ready()));
    }

    @GET
    @Path("bench/wall")
    @Produces(MediaType.TEXT_HTML)
    public TemplateInstance wall() {
        return following.current().map(Templates::wall).orElseGet(() -> Templates.empty(ready()));
    }

    /** The plan that can be begun now; empty when there is none, or a run is at work. */
    private String ready() {
        boolean atWork = following.current().filter(BenchView::live).isPresent();
        return atWork ? "" : desk.ready().orElse("");
    }

    /** Begins the plan that lies ready. */
    @POST
    @Path("bench/begin")
    public Response begin(@FormParam("operator") @Nullable String operator) {
        String name = operator == null ? "" : operator.strip();
        if (name.isEmpty() || name.length() > LONGEST_REASON) {
            throw new NotNow("A run needs the name of who began it; go back and write it down.");
        }
        return switch (desk.begin(name)) {
            case Desk.Told.PassedOn passed ->
                Response.seeOther(URI.create("/bench")).build();
            case Desk.Told.Refused refused -> throw new NotNow(refused.why());
        };
    }

    /** Passes an order on, if the run is still one that can be told so. */
    @POST
    @Path("bench/orders")
    public Response order(
            @FormParam("run") @Nullable String run,
            @FormParam("order") @Nullable String order,
            @FormParam("reason") @Nullable String reason) {
        BenchView view = following
                .current()
                .filter(v -> v.run().equals(run))
                .orElseThrow(() -> new NotNow("The run that this order was meant for is no longer on the bench."));
        Order wanted = order(order)
                .orElseThrow(() -> new NotNow("There is no order of that name; a run can be held, resumed, told to skip"
                        + " a point, stopped or given up."));
        String why = reason == null ? "" : reason.strip();
        Desk.Told told = desk.order(
                view.run(), wanted, view.operator(), why.substring(0, Math.min(why.length(), LONGEST_REASON)));
        return switch (told) {
            case Desk.Told.PassedOn passed ->
                Response.seeOther(URI.create("/bench?asked=" + word(wanted))).build();
            case Desk.Told.Refused refused -> throw new NotNow(refused.why());
        };
    }

    private static Optional<Order> order(@Nullable String word) {
        return Arrays.stream(Order.values()).filter(o -> word(o).equals(word)).findFirst();
    }

    private static String word(Order order) {
        return order.name().toLowerCase(Locale.ROOT);
    }
}
