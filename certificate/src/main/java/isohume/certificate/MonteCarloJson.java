// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.uncertainty.montecarlo.Propagation;

/** The comparison of both methods as JSON: enough to run it again, and whose interval is reported. */
final class MonteCarloJson {
    private MonteCarloJson() {}

    static ObjectNode of(Propagation found) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("agrees", found.validatesBudget());
        ResultsJson.number(node, "low", found.found().low());
        ResultsJson.number(node, "high", found.found().high());
        ResultsJson.number(node, "u", found.standardUncertainty());
        ResultsJson.number(node, "budget_U", found.budget().expanded());
        ResultsJson.number(node, "low_difference", found.lowDifference());
        ResultsJson.number(node, "high_difference", found.highDifference());
        ResultsJson.number(node, "tolerance", found.tolerance());
        node.put("trials", found.trials());
        node.put("refused_trials", found.refusedTrials());
        node.put("settled", found.settled());
        node.put("seed", found.settings().seed());
        return node;
    }
}
