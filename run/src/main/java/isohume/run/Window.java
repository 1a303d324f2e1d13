// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;

/** The last stretch of one signal, and the straight line through it. Bounded by its length in time. */
final class Window {
    private record Sample(Instant at, double value) {}

    /**
     * A least-squares line.
     *
     * @param perMinute its slope
     * @param spread standard deviation about it
     */
    record Line(double mean, double perMinute, double spread) {}

    private final Duration length;
    private final Duration interval;
    private final Deque<Sample> samples = new ArrayDeque<>();

    Window(Duration length, Duration interval) {
        this.length = length;
        this.interval = interval;
    }

    void add(Instant at, double value) {
        samples.addLast(new Sample(at, value));
        while (samples.getFirst().at().isBefore(at.minus(length))) {
            samples.removeFirst();
        }
    }

    void clear() {
        samples.clear();
    }

    double minutes() {
        return length.toMillis() / 60_000.0;
    }

    /** How much of the window is still without samples; zero when it can be judged. */
    Duration unfilled() {
        if (samples.isEmpty()) {
            return length;
        }
        Duration spanned =
                Duration.between(samples.getFirst().at(), samples.getLast().at());
        Duration left = length.minus(interval.multipliedBy(2)).minus(spanned); // polls need not keep an exact grid
        boolean dense = samples.size() >= 0.8 * length.dividedBy(interval); // a window full of gaps says nothing
        return left.isNegative() || left.isZero() ? (dense ? Duration.ZERO : interval) : left;
    }

    Line line() {
        return line(0, samples.size());
    }

    /** Slope per minute over the earlier half, then over the later half. */
    double[] halves() {
        int half = samples.size() / 2;
        return new double[] {
            line(0, half).perMinute(),
            line(samples.size() - half, samples.size()).perMinute()
        };
    }

    private Line line(int from, int to) {
        int n = to - from;
        Instant origin = samples.getFirst().at();
        double meanX = 0;
        double meanY = 0;
        Iterator<Sample> first = samples.stream().skip(from).limit(n).iterator();
        while (first.hasNext()) {
            Sample s = first.next();
            meanX += minutes(origin, s) / n;
            meanY += s.value() / n;
        }
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        Iterator<Sample> second = samples.stream().skip(from).limit(n).iterator();
        while (second.hasNext()) {
            Sample s = second.next();
            double dx = minutes(origin, s) - meanX;
            double dy = s.value() - meanY;
            sxx += dx * dx;
            sxy += dx * dy;
            syy += dy * dy;
        }
        double slope = sxx > 0 ? sxy / sxx : 0;
        double residual = Math.max(0, syy - slope * sxy);
        return new Line(meanY, slope, n > 2 ? Math.sqrt(residual / (n - 2)) : 0);
    }

    private static double minutes(Instant origin, Sample sample) {
        return Duration.between(origin, sample.at()).toMillis() / 60_000.0;
    }
}
