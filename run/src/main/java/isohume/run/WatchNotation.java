// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.run.watch.Bounds;
import isohume.run.watch.Fault;
import isohume.run.watch.Measure;
import isohume.run.watch.Policies;
import isohume.run.watch.Policy;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Faults and what is done about them, as parts of a fact. */
final class WatchNotation {
    private WatchNotation() {}

    static ObjectNode guarded(RunFact.Guarded guarded) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        node.set("bounds", bounds(guarded.bounds()));
        ObjectNode policies = node.putObject("policies");
        for (Map.Entry<Fault, Policy> given : new TreeMap<>(guarded.policies().given()).entrySet()) {
            policies.set(given.getKey().key(), policy(given.getValue()));
        }
        return node;
    }

    static RunFact.Guarded guarded(JsonNode node) {
        Map<Fault, Policy> policies = new EnumMap<>(Fault.class);
        node.get("policies").properties().forEach(p -> policies.put(fault(p.getKey()), policy(p.getValue())));
        return new RunFact.Guarded(bounds(node.get("bounds")), new Policies(policies));
    }

    /** A bound that does not bind is left out. */
    private static ObjectNode bounds(Bounds bounds) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        if (!Double.isInfinite(bounds.hottest())) {
            node.put("hottest", bounds.hottest());
        }
        node.put("water", bounds.water());
        node.put("humidity", bounds.humidity()).put("temperature", bounds.temperature());
        ArrayNode pairs = node.putArray("pairs");
        bounds.pairs()
                .forEach(pair -> pairs.addObject()
                        .put("one", pair.one())
                        .put("other", pair.other())
                        .put("within", pair.within()));
        ObjectNode signs = node.putObject("signs");
        new TreeMap<>(bounds.signs()).forEach((flag, fault) -> signs.put(flag, fault.key()));
        return node.put("still", bounds.still().toString())
                .put("astray", bounds.astray().toString())
                .put("undecided", bounds.undecided().toString())
                .put("held", bounds.held().toString());
    }

    private static Bounds bounds(JsonNode node) {
        List<Bounds.Pair> pairs = new ArrayList<>();
        node.get("pairs")
                .forEach(pair -> pairs.add(new Bounds.Pair(
                        pair.get("one").textValue(),
                        pair.get("other").textValue(),
                        pair.get("within").doubleValue())));
        Map<String, Fault> signs = new TreeMap<>();
        node.get("signs")
                .properties()
                .forEach(sign -> signs.put(sign.getKey(), fault(sign.getValue().textValue())));
        return new Bounds(
                node.has("hottest") ? node.get("hottest").doubleValue() : Double.POSITIVE_INFINITY,
                node.get("water").doubleValue(),
                node.get("humidity").doubleValue(),
                node.get("temperature").doubleValue(),
                pairs,
                signs,
                duration(node, "still"),
                duration(node, "astray"),
                duration(node, "undecided"),
                duration(node, "held"));
    }

    private static Duration duration(JsonNode node, String name) {
        return Duration.parse(node.get(name).textValue());
    }

    private static ObjectNode policy(Policy policy) {
        return RunNotation.JSON
                .createObjectNode()
                .put("wait", policy.patience().toString())
                .put("then", policy.then().name());
    }

    private static Policy policy(JsonNode node) {
        return new Policy(
                duration(node, "wait"), Measure.valueOf(node.get("then").textValue()));
    }

    static ObjectNode noticed(RunFact.Noticed noticed) {
        ObjectNode node = about(noticed.fault(), noticed.channel());
        node.put("since", noticed.since().toString()).put("evidence", noticed.evidence());
        node.set("policy", policy(noticed.policy()));
        return node;
    }

    static RunFact.Noticed noticed(JsonNode node) {
        return new RunFact.Noticed(
                faultOf(node),
                channel(node),
                Instant.parse(node.get("since").textValue()),
                node.get("evidence").textValue(),
                policy(node.get("policy")));
    }

    static ObjectNode over(RunFact.Over over) {
        return about(over.fault(), over.channel());
    }

    static RunFact.Over over(JsonNode node) {
        return new RunFact.Over(faultOf(node), channel(node));
    }

    static ObjectNode acted(RunFact.Acted acted) {
        return about(acted.fault(), acted.channel())
                .put("point", acted.point())
                .put("measure", acted.measure().name())
                .put("why", acted.why());
    }

    static RunFact.Acted acted(JsonNode node) {
        return new RunFact.Acted(
                faultOf(node),
                channel(node),
                node.get("point").intValue(),
                Measure.valueOf(node.get("measure").textValue()),
                node.get("why").textValue());
    }

    private static ObjectNode about(Fault fault, String channel) {
        return RunNotation.JSON.createObjectNode().put("fault", fault.key()).put("channel", channel);
    }

    private static Fault faultOf(JsonNode node) {
        return fault(node.get("fault").textValue());
    }

    private static String channel(JsonNode node) {
        return node.get("channel").textValue();
    }

    private static Fault fault(String key) {
        return Fault.ofKey(key).orElseThrow(() -> new IllegalArgumentException("no fault is called " + key));
    }
}
