// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a person answered to questions, by their keys. It remembers which answers were asked for, so it belongs to one
 * reading.
 */
public final class Answers {
    private final Map<String, String> given;
    private final Set<String> used = new LinkedHashSet<>();

    private Answers(Map<String, String> given) {
        this.given = new LinkedHashMap<>(given);
    }

    /** Nothing answered yet. */
    public static Answers none() {
        return new Answers(Map.of());
    }

    /** Answers by the keys of their questions. */
    public static Answers of(Map<String, String> given) {
        return new Answers(given);
    }

    Optional<String> to(String key) {
        used.add(key);
        return Optional.ofNullable(given.get(key)).map(String::strip).filter(text -> !text.isEmpty());
    }

    /** Keys that answered nothing, perhaps misspelt. */
    public Set<String> unused() {
        Set<String> left = new LinkedHashSet<>(given.keySet());
        left.removeAll(used);
        return left;
    }
}
