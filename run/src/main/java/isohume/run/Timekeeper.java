// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.BooleanSupplier;

/** The run's clock, and the only thing that a run waits on. */
public interface Timekeeper extends InstantSource {
    /**
     * Returns when {@link #instant()} has reached {@code when}, or soon after {@code unless} has become true; never
     * later for being interrupted.
     */
    void waitUntil(Instant when, BooleanSupplier unless);

    /**
     * Time that passed since some moment, by a clock that nobody can set. Where {@link #instant()} cannot be set either,
     * that one does.
     */
    default Duration elapsed() {
        return Duration.between(Instant.EPOCH, instant());
    }
}
