// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.control;

import java.util.ArrayList;
import java.util.List;

/**
 * An exponentially weighted moving average, which sees small lasting shifts sooner than a Shewhart chart.
 *
 * <p>z₀ is the centre and zᵢ = λ·xᵢ + (1 - λ)·zᵢ₋₁; the limits are centre ± L·σ·√(λ/(2 - λ)·(1 - (1 - λ)²ⁱ)). Textbook
 * formula, from memory; its variance also follows directly from the definition.
 *
 * @param centre and {@code sigma} as of a {@link ControlChart}
 * @param lambda weight of the newest value, above 0 to 1; 0.2 is common practice, no source
 * @param width L in standard deviations; 3 is common practice, no source
 */
public record MovingAverageChart(double centre, double sigma, double lambda, double width) {
    /** The average after one value, its limits, and whether it lies beyond them. */
    public record Point(double average, double lower, double upper) {
        public boolean isOutOfControl() {
            return average < lower || average > upper;
        }
    }

    public MovingAverageChart {
        if (!(lambda > 0 && lambda <= 1) || !(width > 0) || !(sigma > 0)) {
            throw new IllegalArgumentException("lambda lies above 0 and up to 1, width and sigma above 0; were "
                    + lambda + ", " + width + ", " + sigma);
        }
    }

    /** The averages after each of the values in order of time. */
    public List<Point> follow(double... values) {
        List<Point> points = new ArrayList<>();
        double average = centre;
        double variance = 0; // of the average, in units of sigma squared
        for (double value : values) {
            average = lambda * value + (1 - lambda) * average;
            variance = lambda * lambda + (1 - lambda) * (1 - lambda) * variance;
            double limit = width * sigma * Math.sqrt(variance);
            points.add(new Point(average, centre - limit, centre + limit));
        }
        return List.copyOf(points);
    }
}
