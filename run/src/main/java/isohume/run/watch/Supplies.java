// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import isohume.device.Reading;
import isohume.quantity.Quantity;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Water that runs low, and a bench that is hotter than it may be; values that are doubted count here too. What an
 * instrument under test shows says nothing about the bench.
 */
final class Supplies implements Detector {
    private final Bounds bounds;
    private final Set<String> instruments;

    Supplies(Channels channels, Bounds bounds) {
        this.bounds = bounds;
        this.instruments = Set.copyOf(channels.instruments());
    }

    @Override
    public void look(Poll poll, Consumer<Sighting> seen) {
        for (Reading reading : poll.readings()) {
            switch (reading) {
                case Reading.Value value -> look(reading, value.shown().doubleValue(), poll, seen);
                case Reading.Doubtful doubtful -> look(reading, doubtful.shown().doubleValue(), poll, seen);
                case Reading.Absent absent -> {}
            }
        }
    }

    private void look(Reading reading, double value, Poll poll, Consumer<Sighting> seen) {
        Quantity quantity = reading.channel().quantity();
        String id = reading.channel().id();
        if (quantity == Quantity.WATER_LEVEL && value < bounds.water()) {
            String evidence = String.format(Locale.ROOT, "%.1f %%, at least %.1f %%", value, bounds.water());
            seen.accept(new Sighting(Fault.WATER_LOW, id, poll.at(), evidence));
        }
        if (quantity == Quantity.TEMPERATURE && value > bounds.hottest() && !instruments.contains(id)) {
            String evidence = String.format(Locale.ROOT, "%.1f °C, at most %.1f °C", value, bounds.hottest());
            seen.accept(new Sighting(Fault.OVER_TEMPERATURE, id, poll.at(), evidence));
        }
    }

    @Override
    public void retarget() {}
}
