// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.devices;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import isohume.device.protocol.Protocol;
import isohume.station.convert.NotUnderstood;
import isohume.station.trial.Tryout;
import isohume.station.trial.Tryouts;
import isohume.station.web.Clockface;
import isohume.station.web.Desk;
import isohume.station.web.NotNow;
import isohume.station.web.SameOrigin;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.jspecify.annotations.Nullable;

/** Devices of the bench, and others that somebody describes; and one trial of one of them. */
@Path("/devices")
@Produces(MediaType.TEXT_HTML)
public final class DevicesPage {
    private static final String USUAL_SECONDS = "60";
    private static final int WRONG = 400;

    private final Desk desk;
    private final Clockface clock;
    private final boolean alone;

    DevicesPage(Desk desk, @ConfigProperty(name = "quarkus.http.host") String listening) {
        this.desk = desk;
        this.clock = new Clockface(desk.zone());
        this.alone = SameOrigin.alone(listening);
    }

    @CheckedTemplate(basePath = "devices", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance devices(DevicesView view);

        static native TemplateInstance trial(TrialView view);

        static native TemplateInstance trial$state(TrialView view);

        static native TemplateInstance trial$found(TrialView view);

        static native TemplateInstance trial$bytes(TrialView view);
    }

    /**
     * The list, and the form for another.
     *
     * @param example the protocol of an example to begin with
     */
    @GET
    public TemplateInstance devices(@RestQuery @Nullable String example) {
        String text = example != null && Protocol.keys().contains(example)
                ? Protocol.ofKey(example).scaffold()
                : "";
        return Templates.devices(view(text, ""));
    }

    private DevicesView view(String text, String trouble) {
        return DevicesView.of(desk.tryouts(), alone, clock, text, trouble);
    }

    @POST
    @Path("trials")
    public Response begin(
            @FormParam("device") @Nullable String device,
            @FormParam("description") @Nullable String description,
            @FormParam("seconds") @Nullable String seconds) {
        String howLong = seconds == null ? USUAL_SECONDS : seconds.strip();
        String text = description == null ? "" : description;
        try {
            Wanted wanted = device != null
                    ? Wanted.ofBench(tryouts(), device, howLong)
                    : Wanted.described(text, howLong, alone);
            return switch (tryouts().begin(wanted.description(), wanted.howLong())) {
                case Tryouts.Begun.Yes(Tryout tryout) ->
                    Response.seeOther(URI.create("/devices/trials/" + tryout.number()))
                            .build();
                case Tryouts.Begun.Refused(String why) -> again(text, why);
            };
        } catch (NotUnderstood wrong) {
            return again(text, wrong.why());
        }
    }

    /** What was typed stays. */
    private Response again(String text, String trouble) {
        return Response.status(WRONG)
                .entity(Templates.devices(view(text, trouble)))
                .build();
    }

    @GET
    @Path("trials/{number}")
    public TemplateInstance trial(@RestPath int number) {
        return Templates.trial(TrialView.of(found(number), clock));
    }

    @POST
    @Path("trials/{number}/stop")
    public Response stop(@RestPath int number) {
        tryouts().stop(found(number));
        return Response.seeOther(URI.create("/devices/trials/" + number)).build();
    }

    private Tryout found(int number) {
        return tryouts().find(number).orElseThrow(NotFoundException::new);
    }

    private Tryouts tryouts() {
        return desk.tryouts().orElseThrow(() -> new NotNow("No device can be tried here."));
    }
}
