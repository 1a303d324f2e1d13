// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.faults;

import isohume.run.Timekeeper;
import isohume.simulator.SimulatedBench;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;

/** The bench's own time, as fast as it goes, with a wall clock that somebody may set and things that happen meanwhile. */
final class NightTime implements Timekeeper {
    private final SimulatedBench bench;
    private final Instant start;
    private final TreeMap<Duration, Runnable> due = new TreeMap<>();
    private Duration set = Duration.ZERO;

    NightTime(SimulatedBench bench) {
        this.bench = bench;
        this.start = bench.now();
    }

    /** Something that happens when so much of the night has passed; at once, if it has. */
    void at(Duration when, Runnable what) {
        due.merge(when, what, (one, other) -> () -> {
            one.run();
            other.run();
        });
    }

    void after(Duration length, Runnable what) {
        at(elapsed().plus(length), what);
    }

    /** The clock on the wall is set. */
    void step(Duration by) {
        set = set.plus(by);
    }

    @Override
    public Instant instant() {
        return bench.now().plus(set);
    }

    @Override
    public Duration elapsed() {
        return Duration.between(start, bench.now());
    }

    @Override
    public void waitUntil(Instant when, BooleanSupplier unless) {
        Duration until = elapsed().plus(Duration.between(instant(), when));
        while (!due.isEmpty() && due.firstKey().compareTo(until) <= 0 && !unless.getAsBoolean()) {
            Map.Entry<Duration, Runnable> next = due.pollFirstEntry();
            bench.advanceTo(start.plus(next.getKey()));
            next.getValue().run();
        }
        if (!unless.getAsBoolean()) {
            bench.advanceTo(start.plus(until));
        }
    }
}
