// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.quantity.Direction;
import isohume.quantity.Point;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** A plan and a bench's roles as parts of a fact. */
final class PlanNotation {
    private PlanNotation() {}

    static ObjectNode plan(Plan plan) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        node.put("title", plan.title());
        ArrayNode points = node.putArray("points");
        for (Point point : plan.points()) {
            points.addObject()
                    .put("number", point.number())
                    .put("kelvin", point.temperature().kelvin())
                    .put("fraction", point.humidity().fraction())
                    .put("direction", point.direction().key());
        }
        node.set("rules", rules(plan.rules()));
        return node;
    }

    static Plan plan(JsonNode node) {
        List<Point> points = new ArrayList<>();
        for (JsonNode point : node.get("points")) {
            points.add(new Point(
                    point.get("number").intValue(),
                    Temperature.ofKelvin(point.get("kelvin").doubleValue()),
                    RelativeHumidity.ofFraction(point.get("fraction").doubleValue()),
                    point.get("direction").textValue().equals(Direction.ASCENDING.key())
                            ? Direction.ASCENDING
                            : Direction.DESCENDING));
        }
        return new Plan(node.get("title").textValue(), points, rules(node.get("rules")));
    }

    private static ObjectNode rules(Rules rules) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        node.put("interval", rules.interval().toString());
        node.put("window", rules.window().toString());
        node.set("temperature", limits(rules.temperature()));
        node.set("dew_point", limits(rules.dewPoint()));
        node.set("humidity", limits(rules.humidity()));
        node.set("humidity_difference", limits(rules.humidityDifference()));
        node.set("temperature_difference", limits(rules.temperatureDifference()));
        node.put("soak", rules.soak().toString());
        node.put("temperature_soak", rules.temperatureSoak().toString());
        node.put("readings", rules.readings());
        node.put("longest", rules.longest().toString());
        node.put("patience", rules.patience().toString());
        return node;
    }

    private static Rules rules(JsonNode node) {
        return new Rules(
                duration(node, "interval"),
                duration(node, "window"),
                limits(node.get("temperature")),
                limits(node.get("dew_point")),
                limits(node.get("humidity")),
                limits(node.get("humidity_difference")),
                limits(node.get("temperature_difference")),
                duration(node, "soak"),
                duration(node, "temperature_soak"),
                node.get("readings").intValue(),
                duration(node, "longest"),
                duration(node, "patience"));
    }

    private static Duration duration(JsonNode node, String name) {
        return Duration.parse(node.get(name).textValue());
    }

    /** A band that does not matter is left out. */
    private static ObjectNode limits(Limits limits) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        if (!Double.isInfinite(limits.band())) {
            node.put("band", limits.band());
        }
        return node.put("spread", limits.spread()).put("drift_per_minute", limits.drift());
    }

    private static Limits limits(JsonNode node) {
        double band = node.has("band") ? node.get("band").doubleValue() : Double.POSITIVE_INFINITY;
        return new Limits(
                band,
                node.get("spread").doubleValue(),
                node.get("drift_per_minute").doubleValue());
    }

    static ObjectNode roles(Roles roles) {
        ObjectNode node = RunNotation.JSON
                .createObjectNode()
                .put("dew_point", roles.dewPoint())
                .put("deposit", roles.deposit())
                .put("temperature", roles.temperature())
                .put("pressure", roles.pressure())
                .put("mirror_pressure", roles.mirrorPressure());
        ArrayNode instruments = node.putArray("instruments");
        roles.instruments().forEach(instruments::add);
        return node;
    }

    static Roles roles(JsonNode node) {
        List<String> instruments = new ArrayList<>();
        node.get("instruments").forEach(id -> instruments.add(id.textValue()));
        return new Roles(
                node.get("dew_point").textValue(),
                node.get("deposit").textValue(),
                node.get("temperature").textValue(),
                node.get("pressure").textValue(),
                node.get("mirror_pressure").textValue(),
                instruments);
    }
}
