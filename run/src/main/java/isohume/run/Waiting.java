// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.quantity.Quantity;
import isohume.run.settling.Outlook;
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
 * @param outlook what it is expected to do; empty when the rule does not ask or too little has been seen
 * @param frozen why its display is taken for frozen; empty when it is not
 */
public record Waiting(
        String signal,
        Quantity quantity,
        boolean difference,
        OptionalDouble latest,
        List<Criterion> criteria,
        Optional<Duration> left,
        Optional<Outlook> outlook,
        String frozen) {
    static Waiting by(Watched watched, OptionalDouble latest, List<Criterion> criteria, Optional<Duration> left) {
        return new Waiting(
                watched.name(), watched.quantity(), watched.difference(), latest, criteria, left, Optional.empty(), "");
    }

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
        DRIFT,
        /** What is still to come, its estimate and standard uncertainty together; of a reference during a record. */
        TO_COME,
        /** A display that stands although it should not; never met. */
        FROZEN
    }

    /** The criterion that is furthest from met, or nearest to being lost. */
    public Optional<Criterion> worst() {
        return criteria.stream().max(Comparator.comparingDouble(Criterion::ratio));
    }

    /** The criterion of a kind, if the signal is judged by it. */
    public Optional<Criterion> criterion(Kind kind) {
        return criteria.stream().filter(c -> c.kind() == kind).findFirst();
    }

    /** Whether every criterion is within {@code slack} times its limit. */
    boolean settled(double slack) {
        return !criteria.isEmpty() && criteria.stream().allMatch(c -> c.ratio() <= slack);
    }

    public boolean settled() {
        return settled(1);
    }
}
