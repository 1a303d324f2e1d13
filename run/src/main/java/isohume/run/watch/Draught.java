// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import isohume.device.Reading;
import isohume.quantity.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Still air that moves all at once: a reference jumps away from where it stood, and others go with it. That is what an
 * open door looks like to a bench whose chamber cannot tell. Looked for only in settled air.
 */
final class Draught implements Detector {
    private static final Duration STRETCH = Duration.ofMinutes(2);
    private static final Duration GUARD = Duration.ofSeconds(30); // the door was opened before the air had moved
    private static final Duration LASTING = Duration.ofMinutes(1); // after the air was last seen to move
    private static final double DEVIATIONS = 8;
    private static final double LEAST_KELVIN = 0.1;
    private static final double LEAST_PERCENT = 0.6;

    private final Channels channels;
    private final Map<String, Recent> stretches = new HashMap<>();
    private @Nullable Instant since;
    private Instant last = Instant.MIN;
    private String evidence = "";

    Draught(Channels channels) {
        this.channels = channels;
    }

    @Override
    public void look(Poll poll, Consumer<Sighting> seen) {
        if (poll.still()) {
            String jumped = jumped(poll);
            if (!jumped.isEmpty()) {
                since = since == null ? poll.at().minus(GUARD) : since;
                last = poll.at();
                evidence = jumped;
            }
        }
        if (since != null && poll.at().isBefore(last.plus(LASTING))) {
            seen.accept(new Sighting(Fault.DOOR_OPEN, "air", since, evidence));
        } else {
            since = null;
        }
        remember(poll);
    }

    /** The references' jumps that at least one other channel of the same quantity makes too. */
    private String jumped(Poll poll) {
        List<String> jumps = new ArrayList<>();
        double kelvin = jump("temperature", poll.number(channels.temperature()), LEAST_KELVIN);
        if (kelvin != 0 && followed(poll, Quantity.TEMPERATURE, channels.temperature(), kelvin, LEAST_KELVIN)) {
            jumps.add(String.format(Locale.ROOT, "the temperature jumped by %+.2f K", kelvin));
        }
        double percent = jump("humidity", poll.humidity(), LEAST_PERCENT);
        if (percent != 0 && followed(poll, Quantity.RELATIVE_HUMIDITY, "", percent, LEAST_PERCENT)) {
            jumps.add(String.format(Locale.ROOT, "the humidity jumped by %+.2f %% RH", percent));
        }
        return String.join(", ", jumps);
    }

    private boolean followed(Poll poll, Quantity quantity, String reference, double jump, double least) {
        return poll.others(quantity, reference).stream()
                .anyMatch(other -> jump
                                * jump(
                                        other.channel().id(),
                                        OptionalDouble.of(other.shown().doubleValue()),
                                        least / 2)
                        > 0);
    }

    /** How far a value lies from where it stood; 0 where that is within what it usually does. */
    private double jump(String name, OptionalDouble value, double least) {
        Recent stretch = stretches.get(name);
        if (stretch == null || !stretch.full() || value.isEmpty()) {
            return 0;
        }
        double[] usual = stretch.meanAndDeviation();
        double away = value.getAsDouble() - usual[0];
        return Math.abs(away) > Math.max(least, DEVIATIONS * usual[1]) ? away : 0;
    }

    /** What jumps is not taken in, so that it stays a jump until the air has come back or the point settles anew. */
    private void remember(Poll poll) {
        if (since != null) {
            return;
        }
        stretch("temperature").add(poll.at(), poll.number(channels.temperature()));
        stretch("humidity").add(poll.at(), poll.humidity());
        for (Reading reading : poll.readings()) {
            Quantity quantity = reading.channel().quantity();
            if (quantity == Quantity.TEMPERATURE || quantity == Quantity.RELATIVE_HUMIDITY) {
                stretch(reading.channel().id())
                        .add(poll.at(), poll.number(reading.channel().id()));
            }
        }
    }

    private Recent stretch(String name) {
        return stretches.computeIfAbsent(name, n -> new Recent(STRETCH));
    }

    @Override
    public void retarget() {
        stretches.values().forEach(Recent::clear);
        since = null;
    }
}
