// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.plans;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.quantity.Direction;
import isohume.station.convert.NotUnderstood;
import isohume.station.plan.PlanJson;
import isohume.station.plan.PlanText.Leg;
import isohume.station.plan.Shelf;
import isohume.station.web.Desk;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;

/** Plans as data. */
@Path("/api/plans")
@Tag(name = "plans")
@Produces(MediaType.APPLICATION_JSON)
public final class PlansApi {
    private static final int MOST_POINTS = 200;

    private final Desk desk;

    PlansApi(Desk desk) {
        this.desk = desk;
    }

    @GET
    @Operation(summary = "Every plan")
    public List<Shelf.Listed> plans() {
        return desk.plans().list();
    }

    @GET
    @Path("{name}")
    @Operation(summary = "What a plan takes on its bench: reach, uncertainty, time, supplies")
    public ObjectNode plan(@RestPath String name) {
        return PlanJson.prospect(desk.plans().prospect(found(name)));
    }

    @GET
    @Path("{name}/order")
    @Operation(summary = "A plan's points in the order that takes least time")
    public ObjectNode order(@RestPath String name) {
        return PlanJson.rearranged(desk.plans().rearranged(found(name)));
    }

    @POST
    @Path("{name}/check")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(
            summary = "The same as of a plan, with other points; nothing is kept",
            description =
                    "{\"points\": [{\"temperature\": 23, \"relative_humidity\": 50, \"direction\": \"ascending\"}]}, in"
                            + " °C and % RH; direction may be left out.")
    public ObjectNode check(@RestPath String name, JsonNode asked) {
        return PlanJson.prospect(desk.plans().prospect(found(name).with(legs(asked.path("points")))));
    }

    private Shelf.Plan found(String name) {
        return desk.plans().plan(name).orElseThrow(NotFoundException::new);
    }

    private static List<Leg> legs(JsonNode points) {
        if (!points.isArray() || points.isEmpty() || points.size() > MOST_POINTS) {
            throw new NotUnderstood(
                    "points",
                    "points is a list of 1 to " + MOST_POINTS
                            + " objects with a temperature in °C and a relative_humidity in % RH");
        }
        List<PlanForm.Row> rows = new ArrayList<>();
        for (JsonNode point : points) {
            String temperature = Typed.plain(point.path("temperature").asText());
            String humidity = Typed.plain(point.path("relative_humidity").asText());
            Optional<String> trouble = Typed.trouble(rows.size() + 1, temperature, humidity);
            if (trouble.isPresent()) {
                throw new NotUnderstood("points", trouble.get());
            }
            rows.add(new PlanForm.Row(
                    temperature, humidity, direction(point.path("direction").asText())));
        }
        return new PlanForm("", rows, false, List.of()).legs();
    }

    private static String direction(String key) {
        if (key.isEmpty()
                || Arrays.stream(Direction.values()).anyMatch(d -> d.key().equals(key))) {
            return key;
        }
        throw new NotUnderstood(
                "direction", "direction is \"" + key + "\"; ascending or descending is needed, or nothing");
    }
}
