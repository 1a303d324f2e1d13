// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import java.time.Instant;

/**
 * A fault that is there now.
 *
 * @param channel what has it: a channel, or another thing's name
 * @param since the first reading that it may have touched
 * @param evidence what was seen, with figures and units
 */
public record Sighting(Fault fault, String channel, Instant since, String evidence) {
    /** What makes two sightings the same trouble. */
    public record Key(Fault fault, String channel) {}

    public Key key() {
        return new Key(fault, channel);
    }
}
