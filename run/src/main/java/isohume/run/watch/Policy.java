// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import java.time.Duration;

/**
 * What to do about a fault.
 *
 * @param patience how long it may last before anything is done; meanwhile readings are retried, and none is used
 * @param then what is done after that
 */
public record Policy(Duration patience, Measure then) {
    public Policy {
        if (patience.isNegative()) {
            throw new IllegalArgumentException("a wait cannot be negative, was " + patience);
        }
    }
}
