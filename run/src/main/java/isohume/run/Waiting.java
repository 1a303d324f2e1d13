// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.quantity.Quantity;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one signal is waiting for.
 *
 * @param signal in plain words: {@code air temperature}, {@code A-1042 relative humidity − reference}
 * @param latest the signal's last value, in its unit
 * @param difference whether it is a difference from the reference
 * @param criteria empty while too little has been seen
 * @param left expected time until it is settled; empty when that cannot be said yet
 */
public record Waiting(
        String signal,
        Quantity quantity,
        boolean difference,
        OptionalDouble latest,
        List<Criterion> criteria,
        Optional<Duration> left) {
    public Waiting {
        criteria = List.copyOf(criteria);
    }

    /** A measured figure against its limit; met while not above it. */
    public record Criterion(Kind kind, double measured, double limit) {
        /** Above 1 is not met. */
        public double ratio() {
            return measured / limit;
        }
    }

    /** What a criterion looks at. */
    public enum Kind {
        /** Distance of the mean from the set point. */
        BAND,
        /** Scatter about the line. */
        SPREAD,
        /** Slope per minute. */
        DRIFT
    }

    /** The criterion that is furthest from met, or nearest to being lost. */
    public Optional<Criterion> worst() {
        return criteria.stream().max(Comparator.comparingDouble(Criterion::ratio));
    }

    /** Whether every criterion is within {@code slack} times its limit. */
    boolean settled(double slack) {
        return !criteria.isEmpty() && criteria.stream().allMatch(c -> c.ratio() <= slack);
    }

    public boolean settled() {
        return settled(1);
    }
}
