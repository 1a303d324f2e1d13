// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.run.Timekeeper;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.BooleanSupplier;

/** Time as it passes for everybody. */
public final class WallTime implements Timekeeper {
    private static final Duration GLANCE = Duration.ofMillis(50); // between two looks at whether to stop waiting

    private final long origin = System.nanoTime();
    private final InstantSource clock;

    public WallTime(InstantSource clock) {
        this.clock = clock;
    }

    @Override
    public Instant instant() {
        return clock.instant();
    }

    @Override
    public void waitUntil(Instant when, BooleanSupplier unless) {
        Duration end =
                elapsed().plus(Duration.between(clock.instant(), when)); // whatever is done to the clock meanwhile
        Duration left = end.minus(elapsed());
        while (left.isPositive() && !unless.getAsBoolean()) {
            pause(left.compareTo(GLANCE) < 0 ? left : GLANCE);
            left = end.minus(elapsed());
        }
    }

    @Override
    public Duration elapsed() {
        return Duration.ofNanos(System.nanoTime() - origin);
    }

    /** A pause that may end early; whoever waits looks at the clock again. */
    public static void pause(Duration pause) {
        try {
            Thread.sleep(pause.isNegative() ? Duration.ZERO : pause);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
