// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

import java.util.Arrays;

/** Readings of one quantity with their times in seconds from some origin. Immutable. */
public final class TimedValues {
    private final double[] seconds;
    private final double[] values;

    /**
     * @param seconds increasing
     * @param values as many, all finite; gaps are left out
     */
    public TimedValues(double[] seconds, double[] values) {
        if (seconds.length != values.length) {
            throw new IllegalArgumentException(
                    "every reading needs a time: " + values.length + " readings, " + seconds.length + " times");
        }
        for (int i = 0; i < seconds.length; i++) {
            if (!Double.isFinite(values[i]) || !Double.isFinite(seconds[i])) {
                throw new IllegalArgumentException("reading " + (i + 1) + " is not finite; leave a gap out instead");
            }
            if (i > 0 && seconds[i] <= seconds[i - 1]) {
                throw new IllegalArgumentException(
                        "times must increase: " + seconds[i] + " s follows " + seconds[i - 1] + " s");
            }
        }
        this.seconds = seconds.clone();
        this.values = values.clone();
    }

    public int size() {
        return values.length;
    }

    public double seconds(int place) {
        return seconds[place];
    }

    public double value(int place) {
        return values[place];
    }

    /** Means of what lies within each so many seconds, times and values alike; the same where nothing lies so close. */
    TimedValues thinned(double within) {
        if (interval() > within / 2) {
            return this;
        }
        double[] times = new double[seconds.length];
        double[] means = new double[seconds.length];
        int count = 0;
        for (int from = 0, to; from < seconds.length; from = to) {
            to = from;
            while (to < seconds.length && seconds[to] < seconds[from] + within) {
                times[count] += seconds[to];
                means[count] += values[to++];
            }
            times[count] /= to - from;
            means[count++] /= to - from;
        }
        return new TimedValues(Arrays.copyOf(times, count), Arrays.copyOf(means, count));
    }

    double first() {
        return seconds[0];
    }

    double last() {
        return seconds[seconds.length - 1];
    }

    double middle() {
        return (first() + last()) / 2;
    }

    /** The step in the middle of all, in seconds. */
    double interval() {
        double[] steps = new double[seconds.length - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = seconds[i + 1] - seconds[i];
        }
        Arrays.sort(steps);
        return steps[steps.length / 2];
    }

    double mean() {
        return Arrays.stream(values).average().orElse(0);
    }

    /** Mean square about the mean. */
    double variance() {
        double mean = mean();
        return Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElse(0);
    }

    /** The noise from one reading to the next: of white noise, a second difference has √6 times its standard deviation. */
    double noise() {
        double[] bends = new double[values.length - 2];
        for (int i = 0; i < bends.length; i++) {
            bends[i] = Math.abs(values[i] - 2 * values[i + 1] + values[i + 2]);
        }
        Arrays.sort(bends);
        return bends[bends.length / 2] / 0.6745 / Math.sqrt(6); // the median of |x| is 0.6745 σ
    }

    /** The last digit that the values are shown with: the smallest step between two of them. */
    double resolution() {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            double step = sorted[i] - sorted[i - 1];
            if (step > 1e-9 * Math.max(1, Math.abs(sorted[i]))) {
                least = Math.min(least, step);
            }
        }
        return Double.isInfinite(least) ? 0 : least;
    }

    /**
     * What the times of changes are uncertain by between two readings, in seconds: half the bend at each reading against
     * the slope there, over the changes that stand out. A jump between two readings may have been anywhere between.
     */
    double blur() {
        double[] slopes = new double[values.length - 1];
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = (values[i + 1] - values[i]) / (seconds[i + 1] - seconds[i]);
        }
        double[] sizes = Arrays.stream(slopes).map(Math::abs).sorted().toArray();
        double most = sizes[sizes.length - 1];
        double bends = 0;
        double squares = 0;
        for (int i = 1; i < slopes.length; i++) {
            double slope = Math.max(Math.abs(slopes[i]), Math.abs(slopes[i - 1]));
            if (slope > most / 4) {
                double bend = (slopes[i] - slopes[i - 1]) * (seconds[i + 1] - seconds[i - 1]) / 2;
                bends += bend * bend / 16;
                squares += slope * slope;
            }
        }
        return squares > 0 ? Math.sqrt(bends / squares) : 0;
    }
}
