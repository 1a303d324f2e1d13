// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.quantity.Direction;
import isohume.quantity.Point;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
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
        node.set("rules", RulesNotation.rules(plan.rules()));
        return node;
    }

    static Plan plan(JsonNode node) {
        return plan(node, RulesNotation.rules(node.get("rules")));
    }

    /** A plan as it was written before there was a choice of rules. */
    static Plan planOfForm1(JsonNode node) {
        return plan(node, RulesNotation.rulesOfForm1(node.get("rules")));
    }

    private static Plan plan(JsonNode node, Rules rules) {
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
        return new Plan(node.get("title").textValue(), points, rules);
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
