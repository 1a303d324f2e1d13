// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.series;

import java.util.ArrayList;
import java.util.List;

/**
 * How the mean over a time varies from one such time to the next; it shows from where on averaging longer does not help
 * any more. Readings are evenly spaced. Source: NIST SP 1065, 5.2.2 and 5.2.4, with readings in the place of frequencies.
 */
public final class AllanDeviation {
    private AllanDeviation() {}

    /**
     * From adjacent means of m readings, not overlapping.
     *
     * @param m readings in a mean, 1 or more, at most half as many as there are
     */
    public static double adjacent(double[] readings, int m) {
        return deviation(readings, m, m);
    }

    /** From all means of m readings, overlapping: the better estimate. */
    public static double overlapping(double[] readings, int m) {
        return deviation(readings, m, 1);
    }

    /** Overlapping deviations for m = 1, 2, 4, … up to a third of the readings. */
    public static List<Point> doubling(double stepSeconds, double[] readings) {
        List<Point> points = new ArrayList<>();
        for (int m = 1; m <= readings.length / 3; m *= 2) {
            points.add(new Point(m * stepSeconds, overlapping(readings, m)));
        }
        return List.copyOf(points);
    }

    /** The deviation, in the readings' unit, for one averaging time in seconds. */
    public record Point(double averagingSeconds, double deviation) {}

    private static double deviation(double[] readings, int m, int stride) {
        int n = readings.length;
        if (m < 1 || 2L * m > n) {
            throw new IllegalArgumentException(
                    "means of " + m + " readings take at least twice as many readings, got " + n);
        }
        double[] sums = new double[n + 1]; // about the first reading, to keep digits
        for (int i = 0; i < n; i++) {
            sums[i + 1] = sums[i] + (readings[i] - readings[0]);
        }
        double squares = 0;
        int count = 0;
        for (int i = 0; i + 2 * m <= n; i += stride) {
            double step = (sums[i + 2 * m] - 2 * sums[i + m] + sums[i]) / m;
            squares += step * step;
            count++;
        }
        return Math.sqrt(squares / (2.0 * count));
    }
}
