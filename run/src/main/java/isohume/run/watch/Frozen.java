// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import isohume.device.Channel;
import isohume.device.Reading;
import isohume.quantity.Quantity;
import isohume.run.settling.Display;
import isohume.run.settling.Display.Witness;
import isohume.run.settling.Lagged;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Displays that are frozen, as {@link Display} tells them from those that rightly stand still. */
final class Frozen implements Detector {
    private static final String REFERENCE = "reference humidity";

    private final List<String> watched = new ArrayList<>();
    private final Channels channels;
    private final Duration still;
    private final Map<String, Display> displays = new HashMap<>();
    private final Map<String, Lagged> followed = new HashMap<>();

    Frozen(Channels channels, Bounds bounds) {
        this.channels = channels;
        this.still = bounds.still();
        watched.add(channels.temperature());
        watched.add(channels.dewPoint());
        watched.addAll(channels.instruments());
    }

    @Override
    public void look(Poll poll, Consumer<Sighting> seen) {
        double seconds = seconds(poll.at());
        poll.others(Quantity.TEMPERATURE, "").forEach(value -> follow(seconds, value));
        poll.others(Quantity.RELATIVE_HUMIDITY, "").forEach(value -> follow(seconds, value));
        poll.humidity().ifPresent(percent -> lagged(REFERENCE).take(seconds, percent));
        for (String channel : watched) {
            Optional<Reading.Value> value = poll.value(channel);
            if (value.isPresent()) {
                look(poll, seconds, value.get(), seen);
            } else {
                displays.remove(channel); // another detector's; its habits are learned anew
            }
        }
    }

    private static double seconds(Instant at) {
        return at.toEpochMilli() / 1000.0;
    }

    private void follow(double seconds, Reading.Value value) {
        lagged(value.channel().id()).take(seconds, value.shown().doubleValue());
    }

    private Lagged lagged(String name) {
        return followed.computeIfAbsent(name, n -> new Lagged());
    }

    private void look(Poll poll, double seconds, Reading.Value value, Consumer<Sighting> seen) {
        Channel channel = value.channel();
        Display display = displays.computeIfAbsent(channel.id(), id -> new Display(channel.quantity(), still));
        display.take(seconds, value.shown().doubleValue(), value.shown().ulp().doubleValue(), witnesses(poll, channel));
        display.frozen().ifPresent(why -> {
            String shown =
                    value.shown().toPlainString() + " " + channel.quantity().unit();
            String evidence = shown + " " + why.words(unitOfWitness(channel.quantity()));
            Instant since = Instant.ofEpochMilli(Math.round(1000 * display.since()));
            seen.accept(new Sighting(Fault.FROZEN, channel.id(), since, evidence));
        });
    }

    /** Everything else that tells of the same air; none when it is one alone, which proves nothing. */
    private List<Witness> witnesses(Poll poll, Channel channel) {
        boolean thermal = channel.quantity() == Quantity.TEMPERATURE;
        List<Witness> witnesses = new ArrayList<>();
        poll.others(thermal ? Quantity.TEMPERATURE : Quantity.RELATIVE_HUMIDITY, channel.id())
                .forEach(other -> witnesses.add(witness(other)));
        if (!thermal
                && !channel.id().equals(channels.dewPoint())
                && poll.humidity().isPresent()) {
            witnesses.add(new Witness(lagged(REFERENCE), 0));
        }
        return witnesses.size() < 2 ? List.of() : witnesses;
    }

    private Witness witness(Reading.Value value) {
        double digit = value.shown().ulp().doubleValue();
        Display display = displays.get(value.channel().id());
        return new Witness(lagged(value.channel().id()), display == null ? digit : display.step(digit));
    }

    private static String unitOfWitness(Quantity quantity) {
        return quantity == Quantity.DEW_POINT ? "% RH" : quantity.differenceUnit();
    }

    @Override
    public void retarget() {}
}
