// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.moistair.MoistAir;
import isohume.quantity.Phase;
import isohume.quantity.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One channel of an instrument over a record.
 *
 * @param rows in which it has a value under {@code key}, two at least
 * @param over the phase that its dew point is over; water for other quantities
 * @param parents what it is derived from; empty if it is read
 */
record Shown(
        Specification channel,
        String key,
        List<Recording.Row> rows,
        Track track,
        Phase over,
        Optional<Parents> parents) {

    /** The two channels that one is derived from, with their means over the rows that have both. */
    record Parents(
            Derivation derivation,
            Specification first,
            Specification second,
            String firstKey,
            String secondKey,
            double firstMean,
            double secondMean) {
        /** What follows from the means. */
        double value() {
            return derivation.of(firstMean, secondMean);
        }

        /** How much the derived value moves for a unit of the first, by half a step of its display up and down. */
        double firstSlope() {
            double half = first.resolution() / 2;
            return (derivation.of(firstMean + half, secondMean) - derivation.of(firstMean - half, secondMean))
                    / first.resolution();
        }

        /** The same of the second. */
        double secondSlope() {
            double half = second.resolution() / 2;
            return (derivation.of(firstMean, secondMean + half) - derivation.of(firstMean, secondMean - half))
                    / second.resolution();
        }

        /** How much the derived value moves when both displays move by a step. */
        double step() {
            return Math.abs(firstSlope()) * first.resolution() + Math.abs(secondSlope()) * second.resolution();
        }

        /** What is known to come of both, carried over to what is derived from them. */
        Optional<StillToCome> toCome(Map<String, StillToCome> known) {
            StillToCome one = known.get(firstKey);
            StillToCome other = known.get(secondKey);
            return one == null || other == null
                    ? Optional.empty()
                    : Optional.of(new StillToCome(
                            firstSlope() * one.value() + secondSlope() * other.value(),
                            Math.hypot(
                                    firstSlope() * one.standardUncertainty(),
                                    secondSlope() * other.standardUncertainty())));
        }
    }

    /**
     * A channel as it was shown; empty if fewer than two rows have it, or if what it is derived from gives no value in one
     * of them.
     *
     * @param pascals in the chamber
     */
    static Optional<Shown> of(
            Item item, Specification channel, List<Recording.Row> rows, MoistAir air, double pascals) {
        return channel.derived() ? derived(item, channel, rows, air, pascals) : read(item, channel, rows);
    }

    private static Optional<Shown> read(Item item, Specification channel, List<Recording.Row> all) {
        String key = item.key(channel.quantity());
        List<Recording.Row> rows =
                all.stream().filter(r -> r.shown().containsKey(key)).toList();
        if (rows.size() < 2) {
            return Optional.empty();
        }
        Track track = Track.of(rows, channel.resolution(), r -> value(r, key));
        return Optional.of(new Shown(channel, key, rows, track, channel.over(track.mean()), Optional.empty()));
    }

    private static Optional<Shown> derived(
            Item item, Specification channel, List<Recording.Row> all, MoistAir air, double pascals) {
        String first = item.key(channel.parent());
        String second = item.key(Quantity.TEMPERATURE);
        List<Recording.Row> rows = all.stream()
                .filter(r -> r.shown().containsKey(first) && r.shown().containsKey(second))
                .toList();
        if (rows.size() < 2) {
            return Optional.empty();
        }
        double firstMean = mean(rows, first);
        double secondMean = mean(rows, second);
        Specification firstChannel = item.channel(channel.parent()).orElseThrow();
        Specification secondChannel = item.channel(Quantity.TEMPERATURE).orElseThrow();
        try {
            Phase over = channel.quantity() == Quantity.DEW_POINT
                    ? channel.over(
                            new Derivation(air, Quantity.DEW_POINT, Phase.WATER, pascals).of(firstMean, secondMean))
                    : firstChannel.over(firstMean);
            Derivation derivation = new Derivation(air, channel.quantity(), over, pascals);
            Parents parents =
                    new Parents(derivation, firstChannel, secondChannel, first, second, firstMean, secondMean);
            String key = item.key(channel.quantity());
            List<Recording.Row> with = new ArrayList<>();
            for (Recording.Row row : rows) {
                with.add(with(row, key, derivation.of(value(row, first), value(row, second))));
            }
            Track track = Track.of(with, parents.step(), r -> value(r, key));
            return Optional.of(new Shown(channel, key, with, track, over, Optional.of(parents)));
        } catch (IllegalArgumentException nothingFollows) { // 0 % RH has no dew point, for instance
            return Optional.empty();
        }
    }

    private static Recording.Row with(Recording.Row row, String key, double value) {
        Map<String, Double> shown = new LinkedHashMap<>(row.shown());
        shown.put(key, value);
        return new Recording.Row(
                row.at(), row.dewPoint(), row.temperature(), row.pressure(), row.mirrorPressure(), shown);
    }

    private static double mean(List<Recording.Row> rows, String key) {
        return rows.stream().mapToDouble(r -> value(r, key)).average().orElseThrow();
    }

    /** The value in one of its rows. */
    double in(Recording.Row row) {
        return value(row, key);
    }

    private static double value(Recording.Row row, String key) {
        Double value = row.shown().get(key);
        if (value == null) {
            throw new IllegalStateException("rows without " + key + " were left out before");
        }
        return value;
    }

    /** The lines of its reading. */
    Lines lines() {
        return parents.map(p -> new Lines().derived(track, channel, p))
                .orElseGet(() -> new Lines().reading(track, channel));
    }

    /** What was known to come when the record was taken. */
    Optional<StillToCome> toCome(Map<String, StillToCome> known) {
        return parents.isPresent() ? parents.get().toCome(known) : Optional.ofNullable(known.get(key));
    }

    Optional<Derivation> derivation() {
        return parents.map(Parents::derivation);
    }
}
