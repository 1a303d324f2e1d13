// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A doubt that the file leaves and that a person decides.
 *
 * @param key what the answer is called, as in {@code date-order}
 * @param text the question
 * @param choices the answers that fit what was found; where {@code free}, others are taken too
 * @param evidence what in the file speaks for which answer, with its line
 * @param free whether the answer may be something else than a choice, such as another time zone
 */
public record Question(String key, String text, List<Choice> choices, List<String> evidence, boolean free) {
    public Question {
        choices = List.copyOf(choices);
        evidence = List.copyOf(evidence);
    }

    /** An answer and what it means. */
    public record Choice(String value, String meaning) {}

    /** The answers as one text: {@code day_first, month_first}. */
    public String values() {
        return choices.stream().map(Choice::value).collect(Collectors.joining(", "));
    }
}
