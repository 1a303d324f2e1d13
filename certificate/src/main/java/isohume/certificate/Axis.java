// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import java.util.List;
import java.util.stream.IntStream;

/**
 * An axis with ticks on round values: 1, 2 or 5 times a power of ten apart.
 *
 * @param low the first tick
 * @param high the last tick
 * @param step between two ticks
 */
public record Axis(double low, double high, double step) {
    private static final double SLACK = 1e-9; // of a step; an end that lies on a tick needs no further tick

    /**
     * The axis that covers a span.
     *
     * @param most as many ticks as fit, at least 2
     * @throws IllegalArgumentException when an end is not finite
     */
    public static Axis covering(double least, double greatest, int most) {
        if (!Double.isFinite(least) || !Double.isFinite(greatest) || least > greatest || most < 2) {
            throw new IllegalArgumentException(
                    "no axis from " + least + " to " + greatest + " with " + most + " ticks");
        }
        double span = greatest > least ? greatest - least : Math.max(Math.abs(least) * 0.1, 1e-3);
        double middle = (least + greatest) / 2;
        for (double step = roundStep(span / (most - 1)); ; step = roundStep(step * 1.5)) {
            double low = Math.floor((middle - span / 2) / step + SLACK) * step;
            double high = Math.ceil((middle + span / 2) / step - SLACK) * step;
            if (Math.round((high - low) / step) + 1 <= Math.max(most, 3)) {
                return new Axis(low, high, step);
            }
        }
    }

    private static double roundStep(double atLeast) {
        double power = Math.pow(10, Math.floor(Math.log10(atLeast)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * power >= atLeast * (1 - SLACK)) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    public List<Double> ticks() {
        int last = (int) Math.round((high - low) / step);
        return IntStream.rangeClosed(0, last).mapToObj(i -> low + i * step).toList();
    }

    /** A tick's figure, with the decimals that its step needs and a true minus sign. */
    public String label(double tick) {
        return Figures.of(tick, Math.max(0, (int) -Math.floor(Math.log10(step) + SLACK)));
    }

    /** Where a value lies between two ends of a line. */
    public double place(double value, double from, double to) {
        return from + (value - low) / (high - low) * (to - from);
    }
}
