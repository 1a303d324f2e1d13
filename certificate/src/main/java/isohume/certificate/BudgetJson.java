// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.uncertainty.Contribution;
import isohume.uncertainty.Input;
import java.util.Locale;

/** A line of a budget as JSON. */
final class BudgetJson {
    private BudgetJson() {}

    static ObjectNode line(Contribution line) {
        Input input = line.input();
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("symbol", input.symbol());
        node.put("description", input.description());
        ResultsJson.number(node, "estimate", input.estimate());
        node.put("unit", input.unit());
        node.put("distribution", input.distribution().shape());
        ResultsJson.number(node, "u", line.standardUncertainty());
        ResultsJson.number(node, "nu", input.degreesOfFreedom());
        ResultsJson.number(node, "sensitivity", line.sensitivity());
        ResultsJson.number(node, "contribution", line.contribution());
        ResultsJson.number(node, "index_percent", line.indexPercent());
        node.put("origin", input.origin().name().toLowerCase(Locale.ROOT));
        node.put("evidence", input.evidence());
        return node;
    }
}
