// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.BooleanSupplier;

/** A clock that jumps to whatever is waited for. */
final class FakeTime implements Timekeeper, InstantSource {
    private Instant now = Instant.parse("2026-03-02T08:00:00Z");
    private Duration set = Duration.ZERO;

    /** Somebody sets the clock. */
    void step(Duration by) {
        now = now.plus(by);
        set = set.plus(by);
    }

    @Override
    public Duration elapsed() {
        return Duration.between(Instant.EPOCH, now).minus(set);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public void waitUntil(Instant when, BooleanSupplier unless) {
        if (!unless.getAsBoolean() && when.isAfter(now)) {
            now = when;
        }
    }
}
