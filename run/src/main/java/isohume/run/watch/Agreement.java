// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import isohume.device.Reading;
import isohume.quantity.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * References that are contradicted: by a second one that has to agree, or, where there is only one, by everything else
 * that measures the same, all of it on one side. Looked at only while nothing moves, since sensors lag. What is off by
 * less than the bound is not noticed; intermediate checks are for that.
 */
final class Agreement implements Detector {
    private static final Duration STRETCH = Duration.ofMinutes(3);
    private static final double STILL = 0.04; // of what it is off, between the halves: far from the end of a slow tail
    private static final int FEWEST = 2; // witnesses; one alone may be the wrong one

    private final Channels channels;
    private final Bounds bounds;
    private final Map<String, Recent> stretches = new HashMap<>();

    Agreement(Channels channels, Bounds bounds) {
        this.channels = channels;
        this.bounds = bounds;
    }

    @Override
    public void look(Poll poll, Consumer<Sighting> seen) {
        for (Bounds.Pair pair : bounds.pairs()) {
            look(pair, poll, seen);
        }
        Optional<String> thermal =
                contradiction(Quantity.TEMPERATURE, poll.number(channels.temperature()), bounds.temperature(), poll);
        Optional<String> humid = contradiction(Quantity.RELATIVE_HUMIDITY, poll.humidity(), bounds.humidity(), poll);
        Instant since = poll.at().minus(STRETCH);
        if (thermal.isPresent()) { // a reference humidity that is off follows from it
            seen.accept(new Sighting(Fault.DISAGREEING, channels.temperature(), since, thermal.get()));
        } else if (humid.isPresent()) {
            seen.accept(new Sighting(Fault.DISAGREEING, channels.dewPoint(), since, humid.get()));
        }
    }

    private void look(Bounds.Pair pair, Poll poll, Consumer<Sighting> seen) {
        String name = pair.one() + " − " + pair.other();
        Recent stretch = stretch(name);
        stretch.add(poll.at(), minus(poll.number(pair.one()), poll.number(pair.other())));
        if (!stretch.full()) {
            return;
        }
        Recent.Halves halves = stretch.halves();
        if (halves.moved() < STILL * Math.abs(halves.later()) && Math.abs(halves.later()) > pair.within()) {
            String evidence =
                    String.format(Locale.ROOT, "%s is %.3f, at most %.3f", name, halves.later(), pair.within());
            seen.accept(new Sighting(Fault.DISAGREEING, pair.one(), poll.at().minus(STRETCH), evidence));
        }
    }

    private static OptionalDouble minus(OptionalDouble one, OptionalDouble other) {
        return one.isPresent() && other.isPresent()
                ? OptionalDouble.of(one.getAsDouble() - other.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Every witness must be off on the same side, and none may be on its way. */
    private Optional<String> contradiction(Quantity quantity, OptionalDouble reference, double bound, Poll poll) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        int witnesses = 0;
        boolean still = true;
        List<Reading.Value> others = poll.others(quantity, channels.temperature());
        for (Reading.Value other : others) {
            Recent stretch = stretch(other.channel().id());
            stretch.add(poll.at(), minus(OptionalDouble.of(other.shown().doubleValue()), reference));
            if (stretch.full()) {
                Recent.Halves halves = stretch.halves();
                still &= halves.moved() < STILL * Math.abs(halves.later());
                least = Math.min(least, halves.later());
                most = Math.max(most, halves.later());
                witnesses++;
            }
        }
        Recent own = stretch("reference " + quantity.key());
        own.add(poll.at(), reference);
        double off = Math.min(Math.abs(least), Math.abs(most));
        still &= own.full() && own.halves().moved() < STILL * off; // on the way a lag may stand still for a while
        boolean contradicted = still && (least > bound || most < -bound);
        return witnesses >= FEWEST && witnesses == others.size() && contradicted
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "%d others lie %+.2f to %+.2f %s from it, at most %.2f",
                        witnesses,
                        least,
                        most,
                        quantity.differenceUnit(),
                        bound))
                : Optional.empty();
    }

    private Recent stretch(String name) {
        return stretches.computeIfAbsent(name, n -> new Recent(STRETCH));
    }

    @Override
    public void retarget() {
        stretches.values().forEach(Recent::clear);
    }
}
