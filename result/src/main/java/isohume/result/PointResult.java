// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.quantity.Quantity;
import java.time.Instant;
import java.util.List;

/**
 * What came out for one quantity of one instrument at one point. Unrounded, in the quantity's unit; differences in its
 * difference unit.
 *
 * @param reference the value the instrument should have shown
 * @param reading the mean of what it showed
 * @param error reading minus reference
 * @param tolerance half-width; meaningless when the verdict is {@link Judgement#NONE}
 * @param readings how many pairs
 * @param effectiveReadings how many independent pairs they are worth
 */
public record PointResult(
        String instrument,
        Quantity quantity,
        Point point,
        double reference,
        double reading,
        double error,
        List<Line> budget,
        double combined,
        double effectiveDegreesOfFreedom,
        double coverageFactor,
        double expanded,
        double tolerance,
        Judgement verdict,
        int readings,
        double effectiveReadings,
        Conditions conditions) {
    public PointResult {
        budget = List.copyOf(budget);
    }

    /** One line of the budget, ready to be shown. */
    public record Line(
            String symbol,
            String description,
            double estimate,
            String unit,
            String distribution,
            double standardUncertainty,
            double degreesOfFreedom,
            double sensitivity,
            double contribution,
            double indexPercent,
            Origin origin,
            String evidence) {}

    /** Where a line's figure comes from. */
    public enum Origin {
        MEASURED,
        CERTIFICATE,
        ASSUMED
    }

    /** The verdict, in the words of the certificate. */
    public enum Judgement {
        CONFORMS,
        /** Inside the tolerance, but nearer to its edge than the uncertainty. */
        CONFORMS_ON_GUARD_BAND,
        NOT_DECIDED,
        DOES_NOT_CONFORM,
        /** No decision was asked for. */
        NONE
    }

    /** Means over the record, references corrected. */
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
