// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.endurance;

import isohume.device.Channel;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.run.Bench;
import isohume.run.RunFact;
import isohume.run.watch.Bounds;
import isohume.run.watch.Fault;
import isohume.run.watch.Measure;
import isohume.run.watch.Policies;
import isohume.run.watch.Policy;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What each tick took from the last reading of its poll to the wait for the next, less the disk's time: processor time of
 * the run's thread, so that others on the machine do not count.
 */
final class Ticks {
    private static final int EACH = 3_600; // polls between two looks at the heap

    private final ManyChannels channels;
    private final Duration begun;
    private final Duration length;
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private long[] nanos = new long[1 << 16];
    private int count;
    private int recorded;
    private long read;
    private long mostHeap;
    private @Nullable TimedJournal journal;
    private Runnable stop = () -> {};

    Ticks(ManyChannels channels, Duration length) {
        this.channels = channels;
        this.begun = channels.elapsed();
        this.length = length;
    }

    void follow(TimedJournal timed, Runnable then) {
        journal = timed;
        stop = then;
    }

    /** The bench with a clock behind its last instrument, and one before the first. */
    Bench around(Bench bench) {
        List<Instrument> instruments = new ArrayList<>(bench.instruments());
        instruments.add(new Clock());
        Policies patient = new Policies(Map.of(
                Fault.DRY_AIR,
                new Policy(Duration.ZERO, Measure.GO_ON),
                Fault.WET_AIR,
                new Policy(Duration.ZERO, Measure.GO_ON)));
        return new Bench(new Stopping(bench.chamber(), this::tickEnds), instruments).watched(Bounds.usual(), patient);
    }

    void hear(RunFact fact) {
        if (fact instanceof RunFact.Recorded) {
            recorded++;
        }
    }

    /** The next poll begins: what lay between was the tick, and the wait, which takes no time here but the bench's. */
    private void tickEnds() {
        long waited = channels.spent();
        if (read != 0 && journal != null) {
            long took = threads.getCurrentThreadCpuTime() - read - journal.spent() - waited;
            if (count == nanos.length) {
                nanos = Arrays.copyOf(nanos, 2 * count);
            }
            nanos[count++] = Math.max(0, took);
            if (count % EACH == 0) {
                look();
            }
        }
    }

    private void look() {
        if (channels.elapsed().minus(begun).compareTo(length) >= 0) {
            stop.run();
        }
        System.gc(); // what is left is what is held
        Runtime heap = Runtime.getRuntime();
        mostHeap = Math.max(mostHeap, heap.totalMemory() - heap.freeMemory());
    }

    int count() {
        return count;
    }

    int recorded() {
        return recorded;
    }

    /** In bytes, as it was left by collections. */
    double mostHeap() {
        return (double) mostHeap;
    }

    double millis(double share) {
        long[] sorted = Arrays.copyOf(nanos, count);
        Arrays.sort(sorted);
        return count == 0 ? Double.NaN : sorted[(int) Math.min(count - 1.0, share * count)] / 1e6;
    }

    /** Notes when everything has been read. */
    private final class Clock implements Instrument {
        @Override
        public String id() {
            return "clock";
        }

        @Override
        public List<Channel> channels() {
            return List.of();
        }

        @Override
        public List<Reading> read() {
            if (journal != null) {
                var unused = journal.spent();
            }
            read = threads.getCurrentThreadCpuTime();
            return List.of();
        }

        @Override
        public void close() {}
    }
}
