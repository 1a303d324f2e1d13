// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.quantity.Quantity;
import isohume.result.PointResult;
import isohume.result.Results;
import java.io.IOException;
import java.io.Writer;
import java.util.List;

/**
 * Results as JSON: {@code {"job", "units", "points": […], "hysteresis": […]}}, with full precision. Values are in the
 * quantity's unit, differences and uncertainties in its difference unit; what is not a finite number is null, so an
 * infinite number of degrees of freedom is null. {@code U} and {@code k} are what is reported: the budget's, or the Monte
 * Carlo method's where {@code monte_carlo.agrees} is false. One body of this shape is attached to each certificate.
 */
public final class ResultsJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private ResultsJson() {}

    /** Writes the results; the writer stays open. */
    public static void write(Results results, Writer to) throws IOException {
        write(tree(results), to);
    }

    /** Writes the results and, as {@code "remarks": […]}, what is to be said about them; the writer stays open. */
    public static void write(Results results, List<String> remarks, Writer to) throws IOException {
        ObjectNode root = tree(results);
        remarks.forEach(root.putArray("remarks")::add);
        write(root, to);
    }

    private static void write(ObjectNode root, Writer to) throws IOException {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        ObjectMapper mapper = new ObjectMapper();
        mapper.configure(JsonGenerator.Feature.AUTO_CLOSE_TARGET, false);
        mapper.writer(new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines))
                .writeValue(to, root);
    }

    static ObjectNode tree(Results results) {
        ObjectNode root = NODES.objectNode();
        root.put("job", results.job().number());
        ObjectNode units = root.putObject("units");
        for (Quantity q :
                new Quantity[] {Quantity.RELATIVE_HUMIDITY, Quantity.TEMPERATURE, Quantity.DEW_POINT, Quantity.PRESSURE
                }) {
            units.putObject(q.key()).put("value", q.unit()).put("difference", q.differenceUnit());
        }
        ArrayNode points = root.putArray("points");
        results.points().forEach(p -> points.add(point(p)));
        ArrayNode hysteresis = root.putArray("hysteresis");
        results.hysteresis().forEach(h -> hysteresis.add(hysteresis(h)));
        return root;
    }

    private static ObjectNode point(PointResult p) {
        ObjectNode node = NODES.objectNode();
        node.put("instrument", p.instrument());
        node.put("quantity", p.quantity().key());
        p.over().ifPresent(phase -> node.put("over", Names.of(phase)));
        node.put("point", p.point().number());
        node.put("direction", p.point().direction().key());
        SetPoint set = SetPoint.of(p.point());
        node.putObject("set").put("temperature", set.celsius()).put("relative_humidity", set.percent());
        number(node, "reference", p.reference());
        number(node, "reading", p.reading());
        number(node, "error", p.error());
        number(node, "u_c", p.budget().combined());
        number(node, "nu_eff", p.budget().effectiveDegreesOfFreedom());
        number(node, "k", p.coverageFactor());
        number(node, "U", p.expanded());
        node.set("monte_carlo", MonteCarloJson.of(p.propagation()));
        number(node, "tolerance", Verdicts.given(p) ? p.tolerance() : Double.NaN);
        node.put("verdict", Verdicts.key(p.verdict()));
        node.put("n", p.readings());
        number(node, "n_eff", p.effectiveReadings());
        node.set("conditions", conditions(p.conditions()));
        ArrayNode budget = node.putArray("budget");
        p.budget().contributions().forEach(line -> budget.add(BudgetJson.line(line)));
        return node;
    }

    private static ObjectNode conditions(PointResult.Conditions c) {
        ObjectNode node = NODES.objectNode();
        number(node, "dew_point", c.dewPoint());
        node.put("deposit", Names.of(c.deposit()));
        node.put("deposit_by", c.depositBy());
        number(node, "temperature", c.temperature());
        number(node, "relative_humidity", c.relativeHumidity());
        number(node, "pressure", c.pressure());
        node.put("from", c.from().toString());
        node.put("to", c.to().toString());
        return node;
    }

    private static ObjectNode hysteresis(Results.Hysteresis h) {
        ObjectNode node = NODES.objectNode();
        node.put("instrument", h.instrument());
        node.put("quantity", h.quantity().key());
        number(node, "temperature", h.celsius());
        number(node, "relative_humidity", h.humidityPercent());
        number(node, "difference", h.difference());
        return node;
    }

    static void number(ObjectNode node, String name, double value) {
        if (Double.isFinite(value)) {
            node.put(name, value);
        } else {
            node.putNull(name);
        }
    }
}
