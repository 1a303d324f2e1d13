// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

/** The journal cannot keep facts any more: the disk is full, gone, or the file is not what it was. */
public final class JournalLost extends RuntimeException {
    private static final long serialVersionUID = 1;

    public JournalLost(String message, Throwable cause) {
        super(message, cause);
    }

    public JournalLost(String message) {
        super(message);
    }
}
