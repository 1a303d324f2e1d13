// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import isohume.benchmarks.chamber.Outcome.Found;
import isohume.quantity.Quantity;
import java.util.List;
import java.util.stream.DoubleStream;

/** The outcomes of one way of working, taken together. */
record Tally(List<Outcome> outcomes) {
    private static final double NEAR = 0.15;

    Tally {
        outcomes = List.copyOf(outcomes);
    }

    double medianHours() {
        return median(outcomes.stream().mapToDouble(Outcome::hours));
    }

    double meanExpanded(Quantity quantity) {
        return expanded(quantity).average().orElse(Double.NaN);
    }

    double medianExpanded(Quantity quantity) {
        return median(expanded(quantity));
    }

    private DoubleStream expanded(Quantity quantity) {
        return found(quantity).stream().mapToDouble(Found::expanded);
    }

    /** In %, of all that were to be found; what has no result is not covered. */
    double covered(Quantity quantity) {
        List<Found> found = found(quantity);
        long covered = found.stream().filter(Found::covered).count();
        return 100.0 * covered / (found.size() + missing() / 2.0); // each instrument has two quantities
    }

    private List<Found> found(Quantity quantity) {
        return outcomes.stream()
                .flatMap(o -> o.errors().stream())
                .filter(f -> f.quantity() == quantity)
                .toList();
    }

    int missing() {
        return outcomes.stream().mapToInt(Outcome::missing).sum();
    }

    /** In %, of what was to be found. */
    double missingShare() {
        int found = outcomes.stream().mapToInt(o -> o.errors().size()).sum();
        return 100.0 * missing() / (found + missing());
    }

    /** In %: runs whose whole time was foretold within 15 % of it. */
    double foretoldNear() {
        return 100.0 * outcomes.stream().filter(o -> o.foretoldWrong() <= NEAR).count() / outcomes.size();
    }

    static double median(DoubleStream values) {
        double[] sorted = values.sorted().toArray();
        int n = sorted.length;
        return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }
}
