// SPDX-License-Identifier: Apache-2.0
package isohume.station.rehearsal;

import isohume.run.Timekeeper;
import isohume.simulator.SimulatedBench;
import isohume.station.bench.WallTime;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.BooleanSupplier;

/**
 * The bench's own time: whoever waits lets the bench go on. As fast as it can, or a number of times as fast as a wall
 * clock.
 */
public final class SimulatedTime implements Timekeeper {
    private static final Duration GLANCE = Duration.ofMillis(50); // between two looks at whether to stop waiting

    private final SimulatedBench bench;
    private final double speed;
    private final InstantSource wall;

    private SimulatedTime(SimulatedBench bench, double speed, InstantSource wall) {
        this.bench = bench;
        this.speed = speed;
        this.wall = wall;
    }

    public static SimulatedTime asFastAsItCan(SimulatedBench bench) {
        return new SimulatedTime(bench, Double.POSITIVE_INFINITY, InstantSource.system());
    }

    /** So many times as fast as that clock. */
    public static SimulatedTime paced(SimulatedBench bench, double speed, InstantSource wall) {
        return new SimulatedTime(bench, speed, wall);
    }

    @Override
    public Instant instant() {
        return bench.now();
    }

    @Override
    public void waitUntil(Instant when, BooleanSupplier unless) {
        if (Double.isInfinite(speed)) {
            bench.advanceTo(when);
            return;
        }
        Instant began = wall.instant();
        Instant from = bench.now();
        while (bench.now().isBefore(when) && !unless.getAsBoolean()) {
            WallTime.pause(GLANCE);
            Duration passed = Duration.between(began, wall.instant());
            Instant reached = from.plusNanos(Math.round(passed.toNanos() * speed));
            bench.advanceTo(reached.isBefore(when) ? reached : when);
        }
    }
}
