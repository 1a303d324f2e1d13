// SPDX-License-Identifier: Apache-2.0
package isohume.run.lease;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import isohume.journal.Fact;
import isohume.journal.JournalLost;
import java.time.Instant;

/** What is written in the stream of a chamber's lease; the holder is program, process and machine in words. */
sealed interface LeaseFact {
    JsonMapper JSON = JsonMapper.builder().build();
    int TAKEN = 1;
    int RELEASED = 2;

    String holder();

    /** Taken or renewed; it holds until that instant unless it is released before. */
    record Taken(String holder, String machine, String chamber, Instant until) implements LeaseFact {}

    record Released(String holder) implements LeaseFact {}

    static Fact encode(LeaseFact fact) {
        return switch (fact) {
            case Taken t ->
                new Fact(
                        TAKEN,
                        JSON.createObjectNode()
                                .put("holder", t.holder())
                                .put("machine", t.machine())
                                .put("chamber", t.chamber())
                                .put("until", t.until().toString())
                                .toString());
            case Released r ->
                new Fact(
                        RELEASED,
                        JSON.createObjectNode().put("holder", r.holder()).toString());
        };
    }

    static LeaseFact decode(Fact fact) {
        try {
            JsonNode node = JSON.readTree(fact.text());
            String holder = node.get("holder").textValue();
            return switch (fact.form()) {
                case TAKEN ->
                    new Taken(
                            holder,
                            node.get("machine").textValue(),
                            node.get("chamber").textValue(),
                            Instant.parse(node.get("until").textValue()));
                case RELEASED -> new Released(holder);
                default -> throw new IllegalArgumentException("no form " + fact.form());
            };
        } catch (JsonProcessingException | IllegalArgumentException | NullPointerException damaged) {
            throw new JournalLost("a fact of a lease cannot be read: " + fact.text(), damaged);
        }
    }
}
