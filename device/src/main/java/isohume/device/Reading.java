// SPDX-License-Identifier: Apache-2.0
package isohume.device;

import java.math.BigDecimal;
import java.time.Instant;

/** What came back when a channel was read. Silence is a reading too: a gap is recorded, never skipped. */
public sealed interface Reading {
    Channel channel();

    Instant at();

    /**
     * A good reading.
     *
     * @param shown the value in the quantity's unit, with the digits that the instrument resolves
     * @param raw what was on the wire, as text
     */
    record Value(Channel channel, Instant at, BigDecimal shown, String raw) implements Reading {}

    /** A value that the instrument itself, or its description's limits, cast doubt on; {@code flag} says why. */
    record Doubtful(Channel channel, Instant at, BigDecimal shown, String raw, String flag) implements Reading {}

    /** No value; {@code detail} says in plain words what was seen. */
    record Absent(Channel channel, Instant at, Trouble trouble, String detail) implements Reading {}
}
