// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.quantity.Quantity;
import isohume.uncertainty.Budget;
import isohume.uncertainty.conformity.Decision;
import isohume.uncertainty.conformity.Verdict;
import isohume.uncertainty.montecarlo.Propagation;
import java.time.Instant;
import java.util.Optional;

/**
 * What came out for one quantity of one instrument at one point. Unrounded, in the quantity's unit; differences in its
 * difference unit.
 *
 * @param reference the value the instrument should have shown
 * @param reading the mean of what it showed
 * @param propagation the budget of the error, reading minus reference, beside the Monte Carlo method (JCGM 101, 8)
 * @param decision on conformity, where one was asked for
 * @param readings how many pairs
 * @param effectiveReadings how many independent pairs they are worth
 * @param over the phase that a dew point is over, reading and reference alike; empty for other quantities
 */
public record PointResult(
        String instrument,
        Quantity quantity,
        Point point,
        double reference,
        double reading,
        Propagation propagation,
        Optional<Decision> decision,
        int readings,
        double effectiveReadings,
        Conditions conditions,
        Optional<Phase> over) {
    /** A result of another quantity than a dew point. */
    public PointResult(
            String instrument,
            Quantity quantity,
            Point point,
            double reference,
            double reading,
            Propagation propagation,
            Optional<Decision> decision,
            int readings,
            double effectiveReadings,
            Conditions conditions) {
        this(
                instrument,
                quantity,
                point,
                reference,
                reading,
                propagation,
                decision,
                readings,
                effectiveReadings,
                conditions,
                Optional.empty());
    }

    /** Of the error. */
    public Budget budget() {
        return propagation.budget();
    }

    /** Reading minus reference; the correction is its negative. */
    public double error() {
        return budget().value();
    }

    /** Half-width of the tolerance; 0 when no decision was asked for. */
    public double tolerance() {
        return decision.map(d -> d.tolerance().upper()).orElse(0.0);
    }

    public Optional<Verdict> verdict() {
        return decision.map(Decision::verdict);
    }

    /** By the budget, or by the Monte Carlo method where the two do not agree. */
    public double expanded() {
        return propagation.expanded();
    }

    public double coverageFactor() {
        return propagation.coverageFactor();
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
