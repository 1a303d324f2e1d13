// SPDX-License-Identifier: Apache-2.0
package isohume.run.entry;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A reading that a person typed and that was taken.
 *
 * @param number of its fact in the journal
 * @param shown as it was typed
 * @param observed number of the observation that it is paired with
 * @param reference what the reference showed then, uncorrected, in the quantity's unit
 * @param remark what the person was asked about it and how that ended; empty when nothing
 * @param withdrawn why it was taken back; empty while it stands
 */
public record DisplayEntry(
        long number,
        String channel,
        String shown,
        Instant at,
        String operator,
        long observed,
        OptionalDouble reference,
        String remark,
        Optional<Photo> photo,
        Optional<String> withdrawn) {
    public boolean stands() {
        return withdrawn.isEmpty();
    }

    /** In the quantity's unit. */
    public double value() {
        return TypedFigure.value(shown).doubleValue();
    }

    DisplayEntry takenBack(String reason) {
        return new DisplayEntry(
                number, channel, shown, at, operator, observed, reference, remark, photo, Optional.of(reason));
    }
}
