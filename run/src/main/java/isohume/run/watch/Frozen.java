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
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Displays that stand still: one that usually changes does not for minutes, or everything else has moved and it has not.
 * A coarse display in still air may rightly show one value for an hour, so that alone is no sign.
 */
final class Frozen implements Detector {
    private static final int HABIT = 20; // changes in still air, to know how long a display keeps a value
    private static final int TIMES_LONGER = 5; // than it ever kept one
    private static final double LIVELY = 0.7; // steps a poll; two values in turn make 0.5 at most, and may rightly end
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
        private int polls;
        private double travelled;
        private double step = Double.POSITIVE_INFINITY; // the smallest seen, which is the display's own

        /** Whether it scatters over so many digits that no steady value could make it stand still. */
        boolean lively() {
            return changes >= HABIT && travelled >= LIVELY * step * polls;
        }

        void keep(Reading.Value value, Poll poll, Map<String, Double> others) {
            if (poll.still() && shown != null && kept <= TIMES_LONGER * longest) {
                polls++; // until it may have stopped, for its habit is that of before
                double moved = shown.subtract(value.shown()).abs().doubleValue();
                travelled += moved;
                step = moved > 0 ? Math.min(step, moved) : step;
            }
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
        boolean unusual = track.lively() && track.kept >= TIMES_LONGER * track.longest;
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

    /** Most that tell of the same air have moved, for long enough that this one should have too. */
    private Optional<String> moved(Track track, Poll poll, Reading.Value value) {
        double least = Math.max(
                STEPS * value.shown().ulp().doubleValue(), least(value.channel().quantity()));
        double moved = moved(track.witnesses, witnesses(poll, value));
        if (moved < least) {
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
                        moved,
                        unitOfWitness(value.channel().quantity())))
                : Optional.empty();
    }

    /** By how much at least half of the witnesses have moved; one that jumps alone is itself the one in doubt. */
    private static double moved(Map<String, Double> then, Map<String, Double> now) {
        double[] moves = then.entrySet().stream()
                .filter(witness -> now.containsKey(witness.getKey()))
                .mapToDouble(witness -> Math.abs(now.getOrDefault(witness.getKey(), 0.0) - witness.getValue()))
                .sorted()
                .toArray();
        return moves.length < 2 ? 0 : moves[(moves.length - 1) / 2];
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

    /** What should move with a channel: everything else that tells of the same. */
    private Map<String, Double> witnesses(Poll poll, Reading.Value value) {
        String channel = value.channel().id();
        Map<String, Double> witnesses = new HashMap<>();
        boolean thermal = value.channel().quantity() == Quantity.TEMPERATURE;
        Quantity quantity = thermal ? Quantity.TEMPERATURE : Quantity.RELATIVE_HUMIDITY;
        poll.others(quantity, channel).forEach(other -> put(witnesses, other));
        if (!thermal && !channel.equals(channels.dewPoint())) {
            poll.humidity().ifPresent(reference -> witnesses.put("reference", reference));
        }
        return witnesses;
    }

    private static void put(Map<String, Double> witnesses, Reading.Value value) {
        witnesses.put(value.channel().id(), value.shown().doubleValue());
    }

    @Override
    public void retarget() {}
}
