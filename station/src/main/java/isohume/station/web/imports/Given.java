// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.imports;

import jakarta.ws.rs.core.MultivaluedMap;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The answers that a page was asked for with: fields {@code a.KEY}, and {@code b.KEY} where one was typed. */
record Given(String name, Map<String, String> answers) {
    static Given from(MultivaluedMap<String, String> fields) {
        Map<String, String> answers = new TreeMap<>();
        for (String kind : List.of("a.", "b.")) {
            fields.forEach((field, values) -> {
                if (field.startsWith(kind) && !values.getFirst().isBlank()) {
                    answers.put(field.substring(2), values.getFirst().strip());
                }
            });
        }
        List<String> names = fields.getOrDefault("name", List.of());
        return new Given(names.isEmpty() || names.getFirst().isBlank() ? "export.csv" : names.getFirst(), answers);
    }

    /** The same as a query. */
    String query() {
        return "name=" + encoded(name)
                + answers.entrySet().stream()
                        .map(e -> "&" + encoded("a." + e.getKey()) + "=" + encoded(e.getValue()))
                        .collect(Collectors.joining());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
