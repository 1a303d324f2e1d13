// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

import java.util.Arrays;

/**
 * The reference's record as a sensor with a lag would show it, on an even grid. What becomes of the reference's noise on
 * the way is followed by a single wrong reading that goes the same way.
 */
final class Replay {
    private static final int WRONG = 2000; // grid points that the wrong reading is followed for

    private final double from;
    private final double step;
    private final double[] values;
    private final double[] wrong;
    private final double perReading;
    private final boolean[] known;

    private Replay(Replay before, double[] values, double[] wrong) {
        this.from = before.from;
        this.step = before.step;
        this.known = before.known;
        this.perReading = before.perReading;
        this.values = values;
        this.wrong = wrong;
    }

    /**
     * The record itself. Between two readings it is the cubic curve that has the slope between their neighbours at each:
     * a straight line would round every bend, and be taken for a lag. Across a gap it is not known.
     */
    private Replay(TimedValues record, double step) {
        this.from = record.first();
        this.step = step;
        int count = (int) Math.floor((record.last() - record.first()) / step) + 1;
        values = new double[count];
        known = new boolean[count];
        double longest = Math.max(3 * record.interval(), 60);
        for (int i = 0, place = 0; i < count; i++) {
            double at = record.first() + i * step;
            while (place + 2 < record.size() && record.seconds(place + 1) <= at) {
                place++;
            }
            double width = record.seconds(place + 1) - record.seconds(place);
            double share = Math.clamp((at - record.seconds(place)) / width, 0, 1);
            values[i] = cubic(record, place, share, width);
            known[i] = width <= longest;
        }
        double interval = record.interval();
        perReading = record.noise() * record.noise() * step / interval;
        wrong = new double[WRONG];
        double middle = Math.ceil(Math.max(interval, 60) / step) + 1;
        for (int i = 0; i < WRONG; i++) {
            wrong[i] = Math.max(0, 1 - Math.abs(i - middle) * step / interval);
        }
    }

    private static double cubic(TimedValues record, int place, double share, double width) {
        double before = record.value(place);
        double after = record.value(place + 1);
        double rise = after - before;
        double first = width * slope(record, place);
        double last = width * slope(record, place + 1);
        double rest = share * (1 - share);
        return before + share * rise + rest * ((first - rise) * (1 - share) - (last - rise) * share);
    }

    private static double slope(TimedValues record, int place) {
        int before = Math.max(0, place - 1);
        int after = Math.min(record.size() - 1, place + 1);
        return (record.value(after) - record.value(before)) / (record.seconds(after) - record.seconds(before));
    }

    static Replay of(TimedValues record, double step) {
        return new Replay(record, step);
    }

    /** The mean over a width in seconds about each time, so that the reference's noise is no likeness to look for. */
    Replay smoothed(double width) {
        int half = (int) Math.round(width / step / 2);
        return half == 0 ? this : new Replay(this, means(values, half), means(wrong, half));
    }

    private static double[] means(double[] of, int half) {
        double[] sums = new double[of.length + 1];
        for (int i = 0; i < of.length; i++) {
            sums[i + 1] = sums[i] + of[i];
        }
        double[] means = new double[of.length];
        for (int i = 0; i < means.length; i++) {
            int reach = Math.min(half, Math.min(i, means.length - 1 - i)); // the same on both sides, so nothing moves
            means[i] = (sums[i + reach + 1] - sums[i - reach]) / (2 * reach + 1);
        }
        return means;
    }

    /** As a sensor with a lag of first order, of that many seconds, shows it; it is at rest at the beginning. */
    Replay lagging(double lag) {
        return lag <= 0 ? this : new Replay(this, lagged(values, lag), lagged(wrong, lag));
    }

    /**
     * As a sensor with a lag of first order would have shown it if the reference itself was late by {@code late}: of
     * x = chamber/(1 + late·s), the sensor shows x (1 + late·s)/(1 + lag·s) = f x + (1 - f) x/(1 + lag·s), f = late/lag.
     */
    Replay beside(Replay lagging, double share) {
        return share <= 0
                ? lagging
                : new Replay(this, between(lagging.values, values, share), between(lagging.wrong, wrong, share));
    }

    private static double[] between(double[] one, double[] other, double share) {
        double[] between = new double[one.length];
        for (int i = 0; i < between.length; i++) {
            between[i] = share * other[i] + (1 - share) * one[i];
        }
        return between;
    }

    /** Mean square of what the reference's noise leaves in what is shown. */
    double noise() {
        double squares = 0;
        for (double left : wrong) {
            squares += left * left;
        }
        return perReading * squares;
    }

    private double[] lagged(double[] input, double lag) {
        double keep = Math.exp(-step / lag);
        double ramp = lag / step * (1 - keep); // the input goes straight from one grid point to the next
        double[] output = Arrays.copyOf(input, input.length);
        for (int i = 1; i < output.length; i++) {
            output[i] = keep * output[i - 1] + (ramp - keep) * input[i - 1] + (1 - ramp) * input[i];
        }
        return output;
    }

    /** What is shown at a time in seconds; NaN where it is not known. */
    double at(double seconds) {
        double place = (seconds - from) / step;
        int before = (int) place;
        if (place < 0 || before + 1 >= values.length || !known[before] || !known[before + 1]) {
            return Double.NaN;
        }
        double share = place - before;
        return values[before] + share * (values[before + 1] - values[before]);
    }
}
