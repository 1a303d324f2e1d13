// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** Lets a bench stand alone: its time passes with a clock's, or some times as fast. One thread at a time. */
public final class Pace implements Runnable {
    private static final double SLOWEST = 0.001;
    private static final double FASTEST = 20_000;
    private static final Duration BETWEEN_TICKS = Duration.ofMillis(50);

    private final SimulatedBench bench;
    private final double times;
    private final InstantSource wall;
    private final Instant wallStart;
    private final Instant benchStart;

    private Pace(SimulatedBench bench, double times, InstantSource wall) {
        Limits.between("speed", times, SLOWEST, FASTEST, "times");
        this.bench = bench;
        this.times = times;
        this.wall = wall;
        wallStart = wall.instant();
        benchStart = bench.now();
    }

    /**
     * From now on, by that clock.
     *
     * @param times simulated seconds per second of the clock, 0.001 to 20 000
     */
    public static Pace of(SimulatedBench bench, double times, InstantSource wall) {
        return new Pace(bench, times, wall);
    }

    /** Advances the bench to where it should be by now, and returns that instant. */
    @CanIgnoreReturnValue
    public Instant tick() {
        double passed = Duration.between(wallStart, wall.instant()).toNanos() * times;
        Instant due = benchStart.plusNanos((long) passed);
        bench.advanceTo(due);
        return due;
    }

    /** Ticks until its thread is interrupted. */
    @Override
    public void run() {
        try {
            while (!Thread.currentThread().isInterrupted()) {
                tick();
                Thread.sleep(BETWEEN_TICKS);
            }
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
        }
    }
}
