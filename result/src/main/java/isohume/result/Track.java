// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.uncertainty.Distribution;
import isohume.uncertainty.Origin;
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
record Track(
        double mean,
        double driftOverHalf,
        double perSecond,
        Distribution.MeanOfReadings noise,
        Origin origin,
        String evidence) {
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
            return measured(series.mean(), 0, 0, series.distribution());
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
        return measured(
                series.mean(),
                slope * middle,
                slope,
                Series.of(seconds, residuals).distribution());
    }

    private static Track measured(
            double mean, double driftOverHalf, double perSecond, Distribution.MeanOfReadings noise) {
        return new Track(mean, driftOverHalf, perSecond, noise, Origin.MEASURED, "this record, its line and about it");
    }

    /** A signal before any of it is read: steady, with the noise that its kind usually has. */
    static Track assumed(double mean, double uncertaintyOfMean, int readings) {
        double scatter = uncertaintyOfMean * Math.sqrt(readings);
        return new Track(
                mean,
                0,
                0,
                new Distribution.MeanOfReadings(scatter, readings),
                Origin.ASSUMED,
                "usual for its kind, " + readings + " readings");
    }

    double effectiveNumber() {
        return noise.effectiveNumber();
    }
}
