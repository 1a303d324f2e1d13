// SPDX-License-Identifier: Apache-2.0
package isohume.run.entry;

/**
 * A picture of a display, kept untouched outside of the journal.
 *
 * @param sha256 of its bytes, in small hexadecimal digits; it is kept under this name
 * @param name the file's name as it came
 */
public record Photo(String sha256, String name, String mediaType, long bytes) {
    public Photo {
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("a SHA-256 has 64 hexadecimal digits, was " + sha256);
        }
    }
}
