// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

/**
 * A fact as it is written down: the number of its form, and its text. The module that owns the form encodes and
 * decodes it by hand; the journal only keeps it.
 *
 * @param form number of the form, positive; a form's meaning never changes, a changed form gets a new number
 * @param text a JSON object on one line: it begins and ends with a brace, has no control characters and no half
 *     surrogate pairs, and is at most {@link #MOST_CHARACTERS} long
 */
public record Fact(int form, String text) {
    /** Longest text, in UTF-16 units; keeps a page of entries within memory. */
    public static final int MOST_CHARACTERS = 4_000_000;

    public Fact {
        if (form < 1) {
            throw new IllegalArgumentException("a form's number is positive, was " + form);
        }
        if (text.length() > MOST_CHARACTERS) {
            throw new IllegalArgumentException("a fact's text has at most " + MOST_CHARACTERS + " characters, had "
                    + text.length() + "; split it, or keep a file and its hash");
        }
        if (!text.startsWith("{") || !text.endsWith("}")) {
            throw new IllegalArgumentException("a fact's text is a JSON object, was " + beginning(text));
        }
        // An unpaired surrogate has no UTF-8 form: what is read back would not be what was written.
        if (text.chars().anyMatch(c -> c < ' ') || !UTF_8.newEncoder().canEncode(text)) {
            throw new IllegalArgumentException(
                    "a fact's text is one line of whole Unicode characters without controls, was " + beginning(text));
        }
    }

    private static String beginning(String text) {
        return text.length() <= 60 ? text : text.substring(0, 60) + "…";
    }
}
