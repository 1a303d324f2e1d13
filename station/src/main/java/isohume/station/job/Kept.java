// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.device.sheet.Sheet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/** The documents of a worksheet as they were used, so that a run's record holds what it was begun with. */
final class Kept {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Texts from;
    private final Map<String, String> texts = new LinkedHashMap<>();

    Kept(Texts from) {
        this.from = from;
    }

    Sheet sheet(String name) {
        return Sheet.parse(texts.computeIfAbsent(name, from::text), name);
    }

    /** A JSON object from names to documents, the plan first. */
    String record() {
        ObjectNode node = JSON.createObjectNode();
        texts.forEach(node::put);
        return node.toString();
    }

    /** The worksheet that such a record holds. */
    static Worksheet read(String record) {
        Map<String, String> texts = documents(record);
        String plan = texts.keySet().iterator().next();
        return Worksheet.read(name -> Objects.requireNonNull(texts.get(name), name), plan);
    }

    /** The documents that such a record holds, the plan first. */
    static Map<String, String> documents(String record) {
        try {
            Map<String, String> texts = new LinkedHashMap<>();
            for (Map.Entry<String, JsonNode> text : JSON.readTree(record).properties()) {
                texts.put(text.getKey(), text.getValue().textValue());
            }
            return texts;
        } catch (JsonProcessingException damaged) {
            throw new IllegalArgumentException("this is no record of a worksheet: " + record, damaged);
        }
    }
}
