// SPDX-License-Identifier: Apache-2.0
package isohume.run.entry;

import java.time.Instant;
import java.util.Optional;

/** What a person says about a display. */
public sealed interface Word {
    String operator();

    /**
     * It shows this.
     *
     * @param text digit for digit
     * @param at when it was read
     * @param confirmed whether the person was asked about it and stands by it
     * @param first what was typed before, where the person was asked and corrected it; else empty
     */
    record Shown(
            String channel,
            String text,
            Instant at,
            String operator,
            boolean confirmed,
            String first,
            Optional<Photo> photo)
            implements Word {
        /** A plain one. */
        public Shown(String channel, String text, Instant at, String operator) {
            this(channel, text, at, operator, false, "", Optional.empty());
        }

        /** The same, by which the person stands. */
        public Shown thatStands() {
            return new Shown(channel, text, at, operator, true, first, photo);
        }
    }

    /** An entry was a mistake; {@code entry} is its number in the journal. */
    record Mistaken(long entry, String operator, String reason) implements Word {}

    /** The channel is left out at the present point. */
    record Omitted(String channel, String operator, String reason) implements Word {}
}
