// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.control;

import java.util.ArrayList;
import java.util.List;

/**
 * A Shewhart chart of individual values: warning at ±2 and action at ±3 standard deviations from the centre, with the
 * run rules of the Western Electric handbook (1956; from memory).
 *
 * @param centre centre line, in the unit of the values
 * @param sigma standard deviation of a single value, above zero
 */
public record ControlChart(double centre, double sigma) {
    private static final double WARNING = 2;
    private static final double ACTION = 3;

    /** The mean of the absolute difference of two standard normal values, d2 for n = 2: 2/√π. */
    private static final double MOVING_RANGE_OF_SIGMA = 2 / Math.sqrt(Math.PI);

    /** What one value on the chart says. */
    public enum Signal {
        IN_CONTROL,
        /** Beyond two standard deviations. */
        WARNING,
        /** Beyond three standard deviations, or a run that chance seldom makes. */
        ACTION
    }

    public ControlChart {
        if (!Double.isFinite(centre) || !(sigma > 0) || Double.isInfinite(sigma)) {
            throw new IllegalArgumentException("a control chart needs a finite centre and a standard deviation above"
                    + " zero, were " + centre + " and " + sigma);
        }
    }

    /** From past values: their mean, and their mean moving range over d2, which a slow drift inflates least. */
    public static ControlChart fromMovingRange(double... baseline) {
        if (baseline.length < 2) {
            throw new IllegalArgumentException("a baseline takes at least two values, got " + baseline.length);
        }
        double sum = baseline[0];
        double ranges = 0;
        for (int i = 1; i < baseline.length; i++) {
            sum += baseline[i];
            ranges += Math.abs(baseline[i] - baseline[i - 1]);
        }
        double sigma = ranges / (baseline.length - 1) / MOVING_RANGE_OF_SIGMA;
        return new ControlChart(sum / baseline.length, sigma);
    }

    public double lowerActionLimit() {
        return centre - ACTION * sigma;
    }

    public double upperActionLimit() {
        return centre + ACTION * sigma;
    }

    /** Judges each value, in order of time, with those before it. */
    public List<Signal> judge(double... values) {
        List<Signal> signals = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            signals.add(judge(values, i));
        }
        return List.copyOf(signals);
    }

    private Signal judge(double[] values, int index) {
        boolean run = sameSide(values, index, 3, 2, 2)
                || sameSide(values, index, 5, 4, 1)
                || sameSide(values, index, 8, 8, 0);
        double distance = Math.abs(values[index] - centre) / sigma;
        if (distance > ACTION || run) {
            return Signal.ACTION;
        }
        return distance > WARNING ? Signal.WARNING : Signal.IN_CONTROL;
    }

    /** Whether so many of the last values lie beyond a limit on the side of the newest, which is one of them. */
    private boolean sameSide(double[] values, int index, int last, int count, double limit) {
        double side = Math.signum(values[index] - centre);
        int beyond = 0;
        for (int i = Math.max(0, index - last + 1); i <= index; i++) {
            if (side * (values[i] - centre) > limit * sigma) {
                beyond++;
            }
        }
        return beyond >= count && side * (values[index] - centre) > limit * sigma;
    }
}
