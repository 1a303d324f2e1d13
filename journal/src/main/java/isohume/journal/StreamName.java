// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

/**
 * The name of one chain of facts.
 *
 * @param kind what it is about: {@code run}, {@code certificate}, {@code bench}; lower-case letters
 * @param id which one; letters, digits, dot, dash and underscore
 */
public record StreamName(String kind, String id) {
    public StreamName {
        if (!kind.matches("[a-z]{1,20}") || !id.matches("[A-Za-z0-9._-]{1,80}")) {
            throw new IllegalArgumentException("not a stream's name: " + kind + "/" + id);
        }
    }

    @Override
    public String toString() {
        return kind + "/" + id;
    }
}
