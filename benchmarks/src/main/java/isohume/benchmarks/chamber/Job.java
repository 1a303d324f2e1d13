// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import isohume.quantity.Point;
import isohume.simulator.BenchParameters;
import isohume.station.job.Worksheet;
import isohume.station.rehearsal.BenchPapers;
import isohume.station.rehearsal.Rehearsal;
import java.time.Instant;
import java.util.List;

/** The plan of nineteen points on one bench, to be carried out once by a way of working. */
record Job(String bench, BenchParameters parameters, long seed, Worksheet worksheet) {
    private static final Instant START = Instant.parse("2026-03-02T07:00:00Z");

    static Job of(String bench, BenchParameters parameters, long seed) {
        try {
            String points = NineteenPoints.on(parameters);
            return new Job(bench, parameters, seed, BenchPapers.worksheet(parameters, bench, points));
        } catch (IllegalArgumentException unfit) {
            throw new IllegalArgumentException(bench + ": " + unfit.getMessage(), unfit);
        }
    }

    /** The same points in another order. */
    Job with(List<Point> order) {
        return new Job(bench, parameters, seed, BenchPapers.worksheet(parameters, bench, NineteenPoints.legs(order)));
    }

    /** The bench at rest in its room; the same one for whoever works. */
    Rehearsal rehearse(Worksheet plan) {
        return Rehearsal.of(plan, parameters, seed, START);
    }

    Instant start() {
        return START;
    }
}
