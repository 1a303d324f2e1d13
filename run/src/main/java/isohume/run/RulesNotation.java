// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Rules, targets and what came of them as parts of a fact. */
final class RulesNotation {
    private RulesNotation() {}

    static ObjectNode rules(Rules rules) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        node.put("interval", rules.interval().toString());
        switch (rules.settling()) {
            case SettlingRule.Fixed fixed -> node.set("fixed", fixed(fixed));
            case SettlingRule.Tail tail -> node.set("tail", tail(tail));
        }
        return node.put("least_readings", rules.leastReadings())
                .put("most_readings", rules.mostReadings())
                .put("noise_share", rules.noiseShare())
                .put("longest", rules.longest().toString())
                .put("patience", rules.patience().toString());
    }

    static Rules rules(JsonNode node) {
        return new Rules(
                duration(node, "interval"),
                node.has("fixed") ? fixed(node.get("fixed")) : tail(node.get("tail")),
                node.get("least_readings").intValue(),
                node.get("most_readings").intValue(),
                node.get("noise_share").doubleValue(),
                duration(node, "longest"),
                duration(node, "patience"));
    }

    /** Rules as they were written before there was a choice of them. */
    static Rules rulesOfForm1(JsonNode node) {
        int readings = node.get("readings").intValue();
        return new Rules(
                duration(node, "interval"),
                fixed(node),
                readings,
                readings,
                Rules.USUAL_NOISE_SHARE,
                duration(node, "longest"),
                duration(node, "patience"));
    }

    private static ObjectNode fixed(SettlingRule.Fixed rule) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        node.put("window", rule.window().toString());
        node.set("temperature", limits(rule.temperature()));
        node.set("dew_point", limits(rule.dewPoint()));
        node.set("humidity", limits(rule.humidity()));
        node.set("humidity_difference", limits(rule.humidityDifference()));
        node.set("temperature_difference", limits(rule.temperatureDifference()));
        return node.put("soak", rule.soak().toString())
                .put("temperature_soak", rule.temperatureSoak().toString());
    }

    private static SettlingRule.Fixed fixed(JsonNode node) {
        return new SettlingRule.Fixed(
                duration(node, "window"),
                limits(node.get("temperature")),
                limits(node.get("dew_point")),
                limits(node.get("humidity")),
                limits(node.get("humidity_difference")),
                limits(node.get("temperature_difference")),
                duration(node, "soak"),
                duration(node, "temperature_soak"));
    }

    private static ObjectNode tail(SettlingRule.Tail rule) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        node.put("share", rule.share()).put("least", rule.least().toString());

        node.put("temperature_band", rule.temperatureBand()).put("humidity_band", rule.humidityBand());
        rule.humidityTarget().ifPresent(target -> node.put("humidity_target", target));
        rule.temperatureTarget().ifPresent(target -> node.put("temperature_target", target));
        return node;
    }

    private static SettlingRule.Tail tail(JsonNode node) {
        return new SettlingRule.Tail(
                node.get("share").doubleValue(),
                duration(node, "least"),
                node.get("temperature_band").doubleValue(),
                node.get("humidity_band").doubleValue(),
                number(node, "humidity_target"),
                number(node, "temperature_target"));
    }

    private static OptionalDouble number(JsonNode node, String name) {
        return node.has(name) ? OptionalDouble.of(node.get(name).doubleValue()) : OptionalDouble.empty();
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

    static ObjectNode targets(Targets targets) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        targets.byChannel().forEach((channel, points) -> {
            ArrayNode list = node.putArray(channel);
            points.forEach(list::add);
        });
        return node;
    }

    static Targets targets(JsonNode node) {
        Map<String, List<Double>> byChannel = new TreeMap<>();
        for (Map.Entry<String, JsonNode> one : node.properties()) {
            List<Double> points = new ArrayList<>();
            one.getValue().forEach(point -> points.add(point.doubleValue()));
            byChannel.put(one.getKey(), points);
        }
        return new Targets(byChannel);
    }

    static ObjectNode recorded(RunFact.Recorded recorded) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        node.put("point", recorded.point()).put("first", recorded.first()).put("last", recorded.last());
        ArrayNode list = node.putArray("to_come");
        recorded.toCome()
                .forEach(one -> list.addObject()
                        .put("channel", one.channel())
                        .put("value", one.value())
                        .put("u", one.standardUncertainty()));
        return node;
    }

    static RunFact.Recorded recorded(JsonNode node) {
        List<RunFact.ToCome> toCome = new ArrayList<>();
        node.get("to_come")
                .forEach(one -> toCome.add(new RunFact.ToCome(
                        one.get("channel").textValue(),
                        one.get("value").doubleValue(),
                        one.get("u").doubleValue())));
        return new RunFact.Recorded(
                node.get("point").intValue(),
                node.get("first").longValue(),
                node.get("last").longValue(),
                toCome);
    }
}
