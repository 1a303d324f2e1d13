// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.device.Answer;
import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.device.Trouble;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.math.BigDecimal;
import java.time.Instant;

/** Readings, targets and answers as parts of a fact. Digits are text, so that none is lost or invented. */
final class DeviceNotation {
    private DeviceNotation() {}

    static ObjectNode setpoint(Setpoint target) {
        return RunNotation.JSON
                .createObjectNode()
                .put("kelvin", target.temperature().kelvin())
                .put("fraction", target.humidity().fraction());
    }

    static Setpoint setpoint(JsonNode node) {
        return new Setpoint(
                Temperature.ofKelvin(node.get("kelvin").doubleValue()),
                RelativeHumidity.ofFraction(node.get("fraction").doubleValue()));
    }

    static ObjectNode answer(Answer answer) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        switch (answer) {
            case Answer.Taken taken -> node.set("taken", setpoint(taken.target()));
            case Answer.AtRest atRest -> node.put("at_rest", true);
            case Answer.Refused refused -> node.put("refused", refused.why());
            case Answer.None none -> node.put("none", none.trouble().name()).put("detail", none.detail());
        }
        return node;
    }

    static Answer answer(JsonNode node) {
        if (node.has("taken")) {
            return new Answer.Taken(setpoint(node.get("taken")));
        }
        if (node.has("at_rest")) {
            return new Answer.AtRest();
        }
        if (node.has("refused")) {
            return new Answer.Refused(node.get("refused").textValue());
        }
        return new Answer.None(
                Trouble.valueOf(node.get("none").textValue()),
                node.get("detail").textValue());
    }

    /** The instant is written only where it differs from the poll's. */
    static ObjectNode reading(Reading reading, Instant poll) {
        ObjectNode node = RunNotation.JSON.createObjectNode();
        Channel channel = reading.channel();
        node.put("channel", channel.id()).put("quantity", channel.quantity().key());
        if (!reading.at().equals(poll)) {
            node.put("at", reading.at().toString());
        }
        switch (reading) {
            case Reading.Value v -> node.put("shown", v.shown().toPlainString()).put("raw", v.raw());
            case Reading.Doubtful d ->
                node.put("shown", d.shown().toPlainString()).put("raw", d.raw()).put("doubt", d.flag());
            case Reading.Absent a -> node.put("absent", a.trouble().name()).put("detail", a.detail());
        }
        return node;
    }

    static Reading reading(JsonNode node, Instant poll) {
        String id = node.get("channel").textValue();
        int slash = id.indexOf('/');
        Channel channel = new Channel(
                id.substring(0, slash),
                id.substring(slash + 1),
                Quantity.ofKey(node.get("quantity").textValue()));
        Instant at = node.has("at") ? Instant.parse(node.get("at").textValue()) : poll;
        if (node.has("absent")) {
            return new Reading.Absent(
                    channel,
                    at,
                    Trouble.valueOf(node.get("absent").textValue()),
                    node.get("detail").textValue());
        }
        BigDecimal shown = new BigDecimal(node.get("shown").textValue());
        String raw = node.get("raw").textValue();
        return node.has("doubt")
                ? new Reading.Doubtful(
                        channel, at, shown, raw, node.get("doubt").textValue())
                : new Reading.Value(channel, at, shown, raw);
    }
}
