// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

/**
 * A fact as it is written down: the number of its form, and its text. The module that owns the form encodes and
 * decodes it by hand; the journal only keeps it.
 *
 * @param form number of the form, positive; a form's meaning never changes, a changed form gets a new number
 * @param text a JSON object on one line
 */
public record Fact(int form, String text) {
    public Fact {
        if (form < 1) {
            throw new IllegalArgumentException("a form's number is positive, was " + form);
        }
    }
}
