// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.journal.Fact;
import isohume.run.entry.DisplayedChannel;
import isohume.run.entry.Photo;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Displays that a person reads, and what was done about them, as facts and parts of them. */
final class EntryNotation {
    private static final int TYPED = 51;
    private static final int DECLINED = 52;
    private static final int TAKEN_BACK = 53;
    private static final int LEFT_OUT = 54;
    private static final int WANTED = 55;

    private EntryNotation() {}

    static Fact encode(RunFact.OfDisplay fact) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        return switch (fact) {
            case RunFact.Wanted w -> {
                ArrayNode channels = node.put("point", w.point()).putArray("channels");
                w.channels().forEach(channels::add);
                yield fact(WANTED, node);
            }
            case RunFact.Typed t -> fact(TYPED, typed(node, t));
            case RunFact.Declined d ->
                fact(
                        DECLINED,
                        node.put("channel", d.channel())
                                .put("shown", d.shown())
                                .put("at", d.at().toString())
                                .put("operator", d.operator())
                                .put("why", d.why()));
            case RunFact.TakenBack t ->
                fact(
                        TAKEN_BACK,
                        node.put("entry", t.entry())
                                .put("operator", t.operator())
                                .put("reason", t.reason()));
            case RunFact.LeftOut l ->
                fact(
                        LEFT_OUT,
                        node.put("point", l.point())
                                .put("channel", l.channel())
                                .put("operator", l.operator())
                                .put("reason", l.reason()));
        };
    }

    private static Fact fact(int form, JsonNode node) {
        return new Fact(form, node.toString());
    }

    private static ObjectNode typed(ObjectNode node, RunFact.Typed typed) {
        node.put("point", typed.point())
                .put("channel", typed.channel())
                .put("shown", typed.shown())
                .put("at", typed.at().toString())
                .put("operator", typed.operator())
                .put("observed", typed.observed())
                .put("remark", typed.remark());
        typed.photo()
                .ifPresent(photo -> node.putObject("photo")
                        .put("sha256", photo.sha256())
                        .put("name", photo.name())
                        .put("media_type", photo.mediaType())
                        .put("bytes", photo.bytes()));
        return node;
    }

    static RunFact decode(int form, JsonNode node) {
        return switch (form) {
            case WANTED -> {
                List<String> channels = new ArrayList<>();
                node.get("channels").forEach(channel -> channels.add(channel.textValue()));
                yield new RunFact.Wanted(node.get("point").intValue(), channels);
            }
            case TYPED -> typed(node);
            case DECLINED ->
                new RunFact.Declined(
                        text(node, "channel"),
                        text(node, "shown"),
                        Instant.parse(text(node, "at")),
                        text(node, "operator"),
                        text(node, "why"));
            case TAKEN_BACK ->
                new RunFact.TakenBack(node.get("entry").longValue(), text(node, "operator"), text(node, "reason"));
            case LEFT_OUT ->
                new RunFact.LeftOut(
                        node.get("point").intValue(),
                        text(node, "channel"),
                        text(node, "operator"),
                        text(node, "reason"));
            default -> throw new IllegalArgumentException("no form " + form);
        };
    }

    private static RunFact typed(JsonNode node) {
        return new RunFact.Typed(
                node.get("point").intValue(),
                text(node, "channel"),
                text(node, "shown"),
                Instant.parse(text(node, "at")),
                text(node, "operator"),
                node.get("observed").longValue(),
                text(node, "remark"),
                Optional.ofNullable(node.get("photo")).map(EntryNotation::photo));
    }

    private static Photo photo(JsonNode node) {
        return new Photo(
                text(node, "sha256"),
                text(node, "name"),
                text(node, "media_type"),
                node.get("bytes").longValue());
    }

    static ArrayNode displays(List<DisplayedChannel> displays) {
        ArrayNode list = RunNotation.JSON.createArrayNode();
        for (DisplayedChannel one : displays) {
            list.addObject()
                    .put("channel", one.id())
                    .put("resolution", one.resolution().toPlainString())
                    .put("update", one.update().toString())
                    .put("entries", one.entries())
                    .put("tolerance", one.toleranceConstant())
                    .put("tolerance_share", one.toleranceShare());
        }
        return list;
    }

    static List<DisplayedChannel> displays(JsonNode list) {
        List<DisplayedChannel> displays = new ArrayList<>();
        for (JsonNode one : list) {
            displays.add(new DisplayedChannel(
                    text(one, "channel"),
                    new BigDecimal(text(one, "resolution")),
                    Duration.parse(text(one, "update")),
                    one.get("entries").intValue(),
                    one.get("tolerance").doubleValue(),
                    one.get("tolerance_share").doubleValue()));
        }
        return displays;
    }

    private static String text(JsonNode node, String name) {
        return node.get(name).textValue();
    }
}
