// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.time.Instant;

/** Instants as they are kept: whole microseconds since 1970-01-01T00:00:00 UTC, rounded down. */
final class Microseconds {
    private static final long PER_SECOND = 1_000_000;
    private static final int NANOS_EACH = 1_000;

    private Microseconds() {}

    static long of(Instant instant) {
        return Math.addExact(Math.multiplyExact(instant.getEpochSecond(), PER_SECOND), instant.getNano() / NANOS_EACH);
    }

    static Instant instant(long micros) {
        return Instant.ofEpochSecond(Math.floorDiv(micros, PER_SECOND), Math.floorMod(micros, PER_SECOND) * NANOS_EACH);
    }
}
