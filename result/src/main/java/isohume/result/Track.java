// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.uncertainty.Distribution;
import isohume.uncertainty.series.Drift;
import isohume.uncertainty.series.Series;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * One signal over a record, taken apart into its mean, its drift and the noise about it, so that no spread is counted
 * twice.
 */
record Track(double mean, double driftOverHalf, double perSecond, Distribution.MeanOfReadings noise) {
    private static final double SURE = 0.95;

    private static final double SINGLE_STEP = 1.5; // slope of one step in the middle of a record, in steps per record

    static Track of(List<Recording.Row> rows, ToDoubleFunction<Recording.Row> signal) {
        return of(rows, 0, signal);
    }

    /** A signal that is shown in steps; a slope that a single step explains is none, and the resolution's line covers it. */
    static Track of(List<Recording.Row> rows, double step, ToDoubleFunction<Recording.Row> signal) {
        Instant origin = rows.getFirst().at();
        double[] seconds = rows.stream()
                .mapToDouble(r -> Duration.between(origin, r.at()).toMillis() / 1000.0)
                .toArray();
        double[] values = rows.stream().mapToDouble(signal).toArray();
        Series series = Series.of(seconds, values);
        if (values.length < 3) {
            return new Track(series.mean(), 0, 0, series.distribution());
        }
        Drift drift = series.drift();
        double[] residuals = new double[values.length];
        double middle = series.durationSeconds() / 2;
        for (int i = 0; i < values.length; i++) {
            residuals[i] = values[i] - drift.slopePerSecond() * (seconds[i] - middle);
        }
        // a slope that noise explains is as likely to be none; its standard error is then what may hide in it
        double slope = drift.differsFromZero(SURE)
                ? Math.abs(drift.slopePerSecond())
                : Math.min(Math.abs(drift.slopePerSecond()), drift.standardError());
        slope = Math.max(0, slope - SINGLE_STEP * step / series.durationSeconds());
        return new Track(
                series.mean(),
                slope * middle,
                slope,
                Series.of(seconds, residuals).distribution());
    }

    double effectiveNumber() {
        return noise.effectiveNumber();
    }
}
