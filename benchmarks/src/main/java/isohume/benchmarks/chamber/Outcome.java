// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import isohume.quantity.Quantity;
import isohume.result.PointResult;
import isohume.result.Results;
import isohume.station.rehearsal.TrueErrors;
import isohume.station.rehearsal.TrueErrors.TrueError;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What one way of working came to on one job.
 *
 * @param inChamber from the beginning until the chamber was free again
 * @param errors of each channel at each point that has a result
 * @param missing how many have none
 * @param foretold the whole time as it was foretold with half of the points done; zero when nothing was
 * @param remarks what a person would have been asked
 */
record Outcome(Duration inChamber, List<Found> errors, int missing, Duration foretold, List<String> remarks) {
    Outcome {
        errors = List.copyOf(errors);
        remarks = List.copyOf(remarks);
    }

    /**
     * One error as it was found.
     *
     * @param expanded its U
     * @param truth what should have been found; in the unit of both
     */
    record Found(Quantity quantity, double error, double expanded, double truth) {
        boolean covered() {
            return Math.abs(error - truth) <= expanded;
        }
    }

    private record Place(int point, String instrument, Quantity quantity) {}

    static Outcome of(
            Duration inChamber,
            Results results,
            TrueErrors truth,
            int points,
            Duration foretold,
            List<String> remarks) {
        Map<Place, TrueError> truths = truth.all().stream()
                .collect(
                        Collectors.toMap(t -> new Place(t.point(), t.instrument(), t.quantity()), Function.identity()));
        List<Found> found = new ArrayList<>();
        for (PointResult result : results.points()) {
            TrueError is = truths.get(new Place(result.point().number(), result.instrument(), result.quantity()));
            if (is == null) {
                throw new IllegalStateException("point " + result.point().number() + " has a result and no true error");
            }
            found.add(new Found(
                    result.quantity(), result.budget().value(), result.budget().expanded(), is.error()));
        }
        int channels = results.job().items().stream()
                .mapToInt(item -> item.channels().size())
                .sum();
        return new Outcome(inChamber, found, points * channels - found.size(), foretold, remarks);
    }

    double hours() {
        return inChamber.toMillis() / 3.6e6;
    }

    /** How far the foretold time is from the real one, as a share of that. */
    double foretoldWrong() {
        return (double) foretold.minus(inChamber).abs().toMillis() / inChamber.toMillis();
    }
}
