// SPDX-License-Identifier: Apache-2.0
package isohume.station.demo;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.quantity.Point;
import isohume.quantity.Quantity;
import isohume.run.Plan;
import isohume.station.rehearsal.TrueErrors;
import isohume.station.rehearsal.TrueErrors.TrueError;

/** What the simulated instruments' errors really are, as a document for whoever wants to compare. */
final class Truth {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private Truth() {}

    static String document(TrueErrors truth, Plan plan) {
        ObjectNode document = JSON.createObjectNode();
        ObjectNode units = document.putObject("units");
        units.put("temperature", Quantity.TEMPERATURE.unit());
        units.put("relative_humidity", Quantity.RELATIVE_HUMIDITY.unit());
        units.putObject("true_error")
                .put("temperature", Quantity.TEMPERATURE.differenceUnit())
                .put("relative_humidity", Quantity.RELATIVE_HUMIDITY.differenceUnit());
        ArrayNode points = document.putArray("points");
        truth.all().forEach(error -> put(points.addObject(), error, plan.point(error.point())));
        return document.toPrettyString();
    }

    private static void put(ObjectNode node, TrueError error, Point point) {
        node.put("instrument", error.instrument());
        node.put("quantity", error.quantity().key());
        node.put("direction", point.direction().key());
        node.put("point", point.number());
        node.putObject("set")
                .put("temperature", point.temperature().celsius())
                .put("relative_humidity", point.humidity().percent());
        node.put("true_error", error.error());
    }
}
