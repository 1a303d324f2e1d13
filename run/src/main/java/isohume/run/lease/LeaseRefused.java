// SPDX-License-Identifier: Apache-2.0
package isohume.run.lease;

/** Another program has the chamber; the message says which, since when, and what to do. */
public final class LeaseRefused extends RuntimeException {
    private static final long serialVersionUID = 1;

    LeaseRefused(String message) {
        super(message);
    }
}
