// SPDX-License-Identifier: Apache-2.0
package isohume.station.imported;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import isohume.journal.Fact;
import isohume.journal.JournalLost;
import java.time.Instant;

/** How the facts of the streams {@code file} are written down; described in {@code docs/formats/import-profile.md}. */
final class ImportNotation {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int IMPORTED = 1;
    private static final int ALIGNED = 2;

    private ImportNotation() {}

    static Fact encode(Imported imported) {
        return new Fact(
                IMPORTED,
                JSON.createObjectNode()
                        .put("name", imported.name())
                        .put("sha256", imported.sha256())
                        .put("bytes", imported.bytes())
                        .put("operator", imported.operator())
                        .put("program", imported.program())
                        .put("profile", imported.profile())
                        .put("rows", imported.rows())
                        .put("first", imported.first().toString())
                        .put("last", imported.last().toString())
                        .toString());
    }

    static Fact encode(Aligned aligned) {
        return new Fact(
                ALIGNED,
                JSON.createObjectNode()
                        .put("reference", aligned.reference())
                        .put("offset_s", aligned.offsetSeconds())
                        .put("expanded_s", aligned.expandedSeconds())
                        .put("drift_s_per_day", aligned.driftSecondsPerDay())
                        .put("how", aligned.how())
                        .put("operator", aligned.operator())
                        .toString());
    }

    static boolean isImport(Fact fact) {
        return fact.form() == IMPORTED;
    }

    static boolean isAlignment(Fact fact) {
        return fact.form() == ALIGNED;
    }

    static Aligned alignment(Fact fact) {
        try {
            JsonNode node = JSON.readTree(fact.text());
            return new Aligned(
                    node.path("reference").asText(),
                    node.path("offset_s").asDouble(),
                    node.path("expanded_s").asDouble(),
                    node.path("drift_s_per_day").asDouble(),
                    node.path("how").asText(),
                    node.path("operator").asText());
        } catch (JsonProcessingException damaged) {
            throw new JournalLost("a fact of an imported file is damaged", damaged);
        }
    }

    static Imported decode(Fact fact) {
        if (fact.form() != IMPORTED) {
            throw new JournalLost("the form " + fact.form() + " of an imported file is not known to this program");
        }
        try {
            JsonNode node = JSON.readTree(fact.text());
            return new Imported(
                    node.path("name").asText(),
                    node.path("sha256").asText(),
                    node.path("bytes").asLong(),
                    node.path("operator").asText(),
                    node.path("program").asText(),
                    node.path("profile").asText(),
                    node.path("rows").asInt(),
                    Instant.parse(node.path("first").asText()),
                    Instant.parse(node.path("last").asText()));
        } catch (JsonProcessingException damaged) {
            throw new JournalLost("a fact of an imported file is damaged", damaged);
        }
    }
}
