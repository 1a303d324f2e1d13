// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.result.PointResult.Line;
import java.util.Locale;

/** A line of a budget as JSON. */
final class BudgetJson {
    private BudgetJson() {}

    static ObjectNode line(Line line) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("symbol", line.symbol());
        node.put("description", line.description());
        ResultsJson.number(node, "estimate", line.estimate());
        node.put("unit", line.unit());
        node.put("distribution", line.distribution());
        ResultsJson.number(node, "u", line.standardUncertainty());
        ResultsJson.number(node, "nu", line.degreesOfFreedom());
        ResultsJson.number(node, "sensitivity", line.sensitivity());
        ResultsJson.number(node, "contribution", line.contribution());
        ResultsJson.number(node, "index_percent", line.indexPercent());
        node.put("origin", line.origin().name().toLowerCase(Locale.ROOT));
        node.put("evidence", line.evidence());
        return node;
    }
}
