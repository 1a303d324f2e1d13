// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import isohume.device.Reading;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Displays that stand still: one that usually changes does not for minutes, or everything else has moved and it has not.
 * A coarse display in still air may rightly show one value for an hour, so that alone is no sign.
 */
final class Frozen implements Detector {
    private static final int HABIT = 20; // changes in still air, to know how long a display keeps a value
    private static final int TIMES_LONGER = 5; // than it ever kept one
    private static final Duration SLOWEST = Duration.ofMinutes(3); // for a sensor to answer to what its air does
    private static final double STEPS = 3; // of the last digit, that the air must have moved
    private static final double HUMIDITY = 0.25; // % RH, the least that counts as moved
    private static final double TEMPERATURE = 0.1; // K

    private static final class Track {
        private @Nullable BigDecimal shown;
        private Instant since = Instant.MIN;
        private Instant movedAt = Instant.MAX;
        private Map<String, Double> witnesses = Map.of();
        private int kept;
        private int longest;
        private int changes;

        void keep(Reading.Value value, Poll poll, Map<String, Double> others) {
            if (shown != null && shown.compareTo(value.shown()) == 0) {
                kept++;
                return;
            }
            if (poll.still() && shown != null) {
                longest = Math.max(longest, kept);
                changes++;
            }
            shown = value.shown();
            since = poll.at();
            movedAt = Instant.MAX;
            witnesses = others;
            kept = 1;
        }
    }

    private final List<String> watched = new ArrayList<>();
    private final Channels channels;
    private final Duration still;
    private final Map<String, Track> tracks = new HashMap<>();

    Frozen(Channels channels, Bounds bounds) {
        this.channels = channels;
        this.still = bounds.still();
        watched.add(channels.temperature());
        watched.add(channels.dewPoint());
        watched.addAll(channels.instruments());
    }

    @Override
    public void look(Poll poll, Consumer<Sighting> seen) {
        for (String channel : watched) {
            Optional<Reading.Value> value = poll.value(channel);
            if (value.isEmpty()) {
                tracks.remove(channel); // another detector's; its habits are learned anew
                continue;
            }
            Track track = tracks.computeIfAbsent(channel, c -> new Track());
            track.keep(value.get(), poll, witnesses(poll, value.get()));
            evidence(track, poll, value.get())
                    .ifPresent(why -> seen.accept(new Sighting(Fault.FROZEN, channel, track.since, why)));
        }
    }

    private Optional<String> evidence(Track track, Poll poll, Reading.Value value) {
        Duration kept = Duration.between(track.since, poll.at());
        Optional<String> moved = moved(track, poll, value);
        if (moved.isPresent()) {
            return moved;
        }
        boolean unusual = track.changes >= HABIT && track.kept >= TIMES_LONGER * track.longest;
        return unusual && kept.compareTo(still) >= 0
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "%s %s for %d s; it never kept a value for more than %d polls",
                        value.shown().toPlainString(),
                        value.channel().quantity().unit(),
                        kept.toSeconds(),
                        track.longest))
                : Optional.empty();
    }

    /** All that tell of the same air have moved, for long enough that this one should have too. */
    private Optional<String> moved(Track track, Poll poll, Reading.Value value) {
        double least = Math.max(
                STEPS * value.shown().ulp().doubleValue(), least(value.channel().quantity()));
        Map<String, Double> now = witnesses(poll, value);
        double smallest = Double.POSITIVE_INFINITY;
        int asked = 0;
        for (Map.Entry<String, Double> then : track.witnesses.entrySet()) {
            Double present = now.get(then.getKey());
            if (present != null) {
                smallest = Math.min(smallest, Math.abs(present - then.getValue()));
                asked++;
            }
        }
        if (asked == 0 || smallest < least) {
            track.movedAt = Instant.MAX;
            return Optional.empty();
        }
        track.movedAt = track.movedAt.equals(Instant.MAX) ? poll.at() : track.movedAt;
        return Duration.between(track.movedAt, poll.at()).compareTo(SLOWEST) >= 0
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "%s %s since the air moved by %.2f %s",
                        value.shown().toPlainString(),
                        value.channel().quantity().unit(),
                        smallest,
                        unitOfWitness(value.channel().quantity())))
                : Optional.empty();
    }

    private static double least(Quantity quantity) {
        return switch (quantity) {
            case RELATIVE_HUMIDITY -> HUMIDITY;
            case DEW_POINT -> 1; // % RH, of the others
            case TEMPERATURE, PRESSURE, DEPOSIT, WATER_LEVEL -> TEMPERATURE;
        };
    }

    private static String unitOfWitness(Quantity quantity) {
        return quantity == Quantity.DEW_POINT ? "% RH" : quantity.differenceUnit();
    }

    /** What should move with a channel: for instruments the reference, for references everything else. */
    private Map<String, Double> witnesses(Poll poll, Reading.Value value) {
        String channel = value.channel().id();
        Map<String, Double> witnesses = new HashMap<>();
        if (channel.equals(channels.temperature())) {
            poll.others(Quantity.TEMPERATURE, channel).forEach(other -> put(witnesses, other));
            return witnesses.size() > 1 ? witnesses : Map.of();
        }
        if (channel.equals(channels.dewPoint())) {
            poll.others(Quantity.RELATIVE_HUMIDITY, channel).forEach(other -> put(witnesses, other));
            return witnesses.size() > 1 ? witnesses : Map.of();
        }
        boolean thermal = value.channel().quantity() == Quantity.TEMPERATURE;
        OptionalDouble reference = thermal ? poll.number(channels.temperature()) : poll.humidity();
        reference.ifPresent(present -> witnesses.put("reference", present));
        return witnesses;
    }

    private static void put(Map<String, Double> witnesses, Reading.Value value) {
        witnesses.put(value.channel().id(), value.shown().doubleValue());
    }

    @Override
    public void retarget() {}
}
