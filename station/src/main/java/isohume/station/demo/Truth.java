// SPDX-License-Identifier: Apache-2.0
package isohume.station.demo;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.quantity.Point;
import isohume.quantity.Quantity;
import isohume.result.Item;
import isohume.result.Specification;
import isohume.simulator.SimulatedBench;
import java.util.List;

/**
 * What the simulated instruments' errors really are, noted as each point is recorded. It is written for whoever wants to
 * compare, and nothing in the program reads it.
 */
final class Truth {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final SimulatedBench bench;
    private final List<Item> items;
    private final ObjectNode document = JSON.createObjectNode();
    private final ArrayNode points;

    Truth(SimulatedBench bench, List<Item> items) {
        this.bench = bench;
        this.items = items;
        ObjectNode units = document.putObject("units");
        units.put("temperature", Quantity.TEMPERATURE.unit());
        units.put("relative_humidity", Quantity.RELATIVE_HUMIDITY.unit());
        units.putObject("true_error")
                .put("temperature", Quantity.TEMPERATURE.differenceUnit())
                .put("relative_humidity", Quantity.RELATIVE_HUMIDITY.differenceUnit());
        this.points = document.putArray("points");
    }

    /** Notes every channel's true error as it is now. */
    void note(Point point) {
        for (Item item : items) {
            for (Specification channel : item.channels()) {
                ObjectNode node = points.addObject();
                node.put("instrument", item.id());
                node.put("quantity", channel.quantity().key());
                node.put("direction", point.direction().key());
                node.put("point", point.number());
                node.putObject("set")
                        .put("temperature", point.temperature().celsius())
                        .put("relative_humidity", point.humidity().percent());
                node.put("true_error", bench.trueError(item.id(), channel.quantity()));
            }
        }
    }

    @Override
    public String toString() {
        return document.toPrettyString();
    }
}
