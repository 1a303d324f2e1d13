// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

import java.util.Arrays;

/**
 * The reference's record as a sensor with a lag would show it, on an even grid. The lag is one of first order, or two
 * equal ones after another, which stands for a sensor in a housing.
 */
final class Replay {
    private final double from;
    private final double step;
    private final double[] values;
    private final boolean[] known;

    private Replay(double from, double step, double[] values, boolean[] known) {
        this.from = from;
        this.step = step;
        this.values = values;
        this.known = known;
    }

    /** The record itself. Between two readings it is a straight line; across a gap it is not known. */
    static Replay of(TimedValues record, double step) {
        int count = (int) Math.floor((record.last() - record.first()) / step) + 1;
        double[] values = new double[count];
        boolean[] known = new boolean[count];
        double longest = Math.max(3 * record.interval(), 60);
        for (int i = 0, place = 0; i < count; i++) {
            double at = record.first() + i * step;
            while (place + 2 < record.size() && record.seconds(place + 1) <= at) {
                place++;
            }
            double width = record.seconds(place + 1) - record.seconds(place);
            double share = Math.clamp((at - record.seconds(place)) / width, 0, 1);
            values[i] = record.value(place) + share * (record.value(place + 1) - record.value(place));
            known[i] = width <= longest;
        }
        return new Replay(record.first(), step, values, known);
    }

    /** The mean over a width in seconds about each time, so that the reference's noise is no likeness to look for. */
    Replay smoothed(double width) {
        int half = (int) Math.round(width / step / 2);
        double[] sums = new double[values.length + 1];
        for (int i = 0; i < values.length; i++) {
            sums[i + 1] = sums[i] + values[i];
        }
        double[] means = new double[values.length];
        for (int i = 0; i < means.length; i++) {
            int reach = Math.min(half, Math.min(i, means.length - 1 - i)); // the same on both sides, so nothing moves
            means[i] = (sums[i + reach + 1] - sums[i - reach]) / (2 * reach + 1);
        }
        return new Replay(from, step, means, known);
    }

    /** As a sensor with a lag of that many seconds shows it; it is at rest at the beginning. */
    Replay lagging(double lag, int stages) {
        double[] shown = values;
        for (int stage = 0; stage < stages; stage++) {
            shown = lagged(shown, lag / stages);
        }
        return new Replay(from, step, shown, known);
    }

    /**
     * As a sensor with a lag of first order would have shown it if the reference itself was late by {@code late}: of
     * x = chamber/(1 + late·s), the sensor shows x (1 + late·s)/(1 + lag·s) = f x + (1 - f) x/(1 + lag·s), f = late/lag.
     */
    Replay beside(Replay lagging, double share) {
        double[] shown = new double[values.length];
        for (int i = 0; i < shown.length; i++) {
            shown[i] = share * values[i] + (1 - share) * lagging.values[i];
        }
        return new Replay(from, step, shown, known);
    }

    private double[] lagged(double[] input, double lag) {
        if (lag <= 0) {
            return input;
        }
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
