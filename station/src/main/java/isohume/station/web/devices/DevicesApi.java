// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.devices;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.device.driver.DeviceDescription;
import isohume.device.protocol.Protocol;
import isohume.station.convert.NotUnderstood;
import isohume.station.trial.Tryout;
import isohume.station.trial.Tryouts;
import isohume.station.web.Desk;
import isohume.station.web.NotNow;
import isohume.station.web.SameOrigin;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.Locale;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jspecify.annotations.Nullable;

/** Devices and their trials, as data. */
@Path("/api/devices")
@Tag(name = "devices")
@Produces(MediaType.APPLICATION_JSON)
public final class DevicesApi {
    private final Desk desk;
    private final boolean alone;

    DevicesApi(Desk desk, @ConfigProperty(name = "quarkus.http.host") String listening) {
        this.desk = desk;
        this.alone = SameOrigin.alone(listening);
    }

    @GET
    @Operation(summary = "The devices of the bench, examples of descriptions, and the last trials")
    public ObjectNode devices() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        tryouts().run().ifPresent(run -> node.put("run", run));
        ArrayNode devices = node.putArray("devices");
        tryouts().ofBench().forEach(one -> device(devices.addObject(), one));
        ObjectNode examples = node.putObject("examples");
        Protocol.keys().forEach(key -> examples.put(key, Protocol.ofKey(key).scaffold()));
        ArrayNode trials = node.putArray("trials");
        tryouts()
                .all()
                .forEach(one -> trials.addObject()
                        .put("trial", one.number())
                        .put("device", one.description().id())
                        .put("state", word(one.state())));
        return node;
    }

    private static void device(ObjectNode node, DeviceDescription one) {
        node.put("device", one.id()).put("title", one.title()).put("place", one.place());
        ArrayNode channels = node.putArray("channels");
        one.channels()
                .forEach(channel -> channels.addObject()
                        .put("name", channel.name())
                        .put("quantity", channel.quantity().key())
                        .put("unit", channel.quantity().unit()));
    }

    @POST
    @Path("trials")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(
            summary = "Begins to try a device; it is only read",
            description = "{\"device\": \"mirror\", \"seconds\": 60} for a device of the bench, or {\"description\":"
                    + " \"…\", \"seconds\": 60} with a description in YAML; at most 600 seconds. While a run is at work, a"
                    + " device of the bench is not asked anything: the trial shows what the run reads.")
    public ObjectNode begin(@Nullable JsonNode asked) {
        if (asked == null || !asked.isObject()) {
            throw new NotUnderstood("device", "An object with a device of the bench or a description is needed here.");
        }
        String seconds = asked.path("seconds").asText("60");
        Wanted wanted = asked.has("device")
                ? Wanted.ofBench(tryouts(), asked.path("device").asText(), seconds)
                : Wanted.described(asked.path("description").asText(), seconds, alone);
        return switch (tryouts().begin(wanted.description(), wanted.howLong())) {
            case Tryouts.Begun.Yes(Tryout tryout) -> json(tryout);
            case Tryouts.Begun.Refused(String why) -> throw new NotNow(why);
        };
    }

    @GET
    @Path("trials/{number}")
    @Operation(summary = "What a trial has found by now, and the last of what went over the line")
    public ObjectNode trial(@RestPath int number) {
        return json(found(number));
    }

    @POST
    @Path("trials/{number}/stop")
    @Operation(summary = "Stops a trial; what it found stays")
    public ObjectNode stop(@RestPath int number) {
        tryouts().stop(found(number));
        return json(found(number));
    }

    private static ObjectNode json(Tryout tryout) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("trial", tryout.number()).put("state", word(tryout.state()));
        tryout.run().ifPresent(run -> node.put("run", run));
        node.put("begun", tryout.begun().toString()).put("until", tryout.until().toString());
        ObjectNode whole = node.setAll(tryout.report().json(tryout.description()));
        ArrayNode lines = whole.putArray("transcript");
        tryout.lines().forEach(lines::add);
        return whole.put("transcript_lines_left_out", tryout.linesLeftOut());
    }

    private static String word(Tryout.State state) {
        return state.name().toLowerCase(Locale.ROOT);
    }

    private Tryout found(int number) {
        return tryouts().find(number).orElseThrow(NotFoundException::new);
    }

    private Tryouts tryouts() {
        return desk.tryouts().orElseThrow(() -> new NotNow("No device can be tried here."));
    }
}
