// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalDouble;

/** The last minutes of one value, to tell where it is and whether it moves. Bounded by its length in time. */
final class Recent {
    private record Sample(Instant at, double value) {}

    /**
     * Where a value was and is.
     *
     * @param earlier its mean over the earlier half
     * @param later its mean over the later half
     */
    record Halves(double earlier, double later) {
        double moved() {
            return Math.abs(later - earlier);
        }
    }

    private final Duration length;
    private final Deque<Sample> samples = new ArrayDeque<>();
    private boolean full;

    Recent(Duration length) {
        this.length = length;
    }

    /** A missing value begins the stretch anew. */
    void add(Instant at, OptionalDouble value) {
        if (value.isEmpty()) {
            clear();
            return;
        }
        samples.addLast(new Sample(at, value.getAsDouble()));
        Instant from = at.minus(length);
        while (samples.getFirst().at().isBefore(from)) {
            samples.removeFirst();
            full = true;
        }
    }

    void clear() {
        samples.clear();
        full = false;
    }

    /** Whether the whole length has been seen. */
    boolean full() {
        return full;
    }

    Halves halves() {
        int half = samples.size() / 2;
        double earlier = 0;
        double later = 0;
        int place = 0;
        for (Sample sample : samples) {
            if (place < half) {
                earlier += sample.value() / half;
            } else {
                later += sample.value() / (samples.size() - half);
            }
            place++;
        }
        return new Halves(earlier, later);
    }

    /** Mean and standard deviation; of nothing, both 0. */
    double[] meanAndDeviation() {
        double mean = 0;
        for (Sample sample : samples) {
            mean += sample.value() / samples.size();
        }
        double squares = 0;
        for (Sample sample : samples) {
            squares += (sample.value() - mean) * (sample.value() - mean);
        }
        return new double[] {mean, samples.size() > 1 ? Math.sqrt(squares / (samples.size() - 1)) : 0};
    }
}
