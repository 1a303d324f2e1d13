// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.quantity.Quantity;
import isohume.uncertainty.Budget;
import isohume.uncertainty.conformity.Decision;
import isohume.uncertainty.conformity.Verdict;
import java.time.Instant;
import java.util.Optional;

/**
 * What came out for one quantity of one instrument at one point. Unrounded, in the quantity's unit; differences in its
 * difference unit.
 *
 * @param reference the value the instrument should have shown
 * @param reading the mean of what it showed
 * @param budget of the error, reading minus reference
 * @param decision on conformity, where one was asked for
 * @param readings how many pairs
 * @param effectiveReadings how many independent pairs they are worth
 */
public record PointResult(
        String instrument,
        Quantity quantity,
        Point point,
        double reference,
        double reading,
        Budget budget,
        Optional<Decision> decision,
        int readings,
        double effectiveReadings,
        Conditions conditions) {

    /** Reading minus reference; the correction is its negative. */
    public double error() {
        return budget.value();
    }

    /** Half-width of the tolerance; 0 when no decision was asked for. */
    public double tolerance() {
        return decision.map(d -> d.tolerance().upper()).orElse(0.0);
    }

    public Optional<Verdict> verdict() {
        return decision.map(Decision::verdict);
    }

    public double expanded() {
        return budget.expanded();
    }

    public double coverageFactor() {
        return budget.coverageFactor();
    }

    /** Means over the record, references corrected: °C, % RH, Pa. */
    public record Conditions(
            double dewPoint,
            Phase deposit,
            String depositBy,
            double temperature,
            double relativeHumidity,
            double pressure,
            Instant from,
            Instant to) {}
}
