// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.quantity.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * An instrument under test, as it was received.
 *
 * @param id the laboratory's own number for it
 * @param kind what it is, in plain words: probe and transmitter, handheld, logger
 * @param position where in the chamber it was read
 * @param condition its state on arrival
 */
public record Item(
        String id,
        String kind,
        String maker,
        String model,
        String serial,
        String position,
        LocalDate received,
        String condition,
        List<Specification> channels) {
    public Item {
        channels = List.copyOf(channels);
        for (Specification channel : channels) {
            if (channel.derived() && !(isRead(channels, channel.parent()) && isRead(channels, Quantity.TEMPERATURE))) {
                throw new IllegalArgumentException(id + " shows no "
                        + channel.parent().key() + " and temperature that its "
                        + channel.quantity().key() + " could be derived from");
            }
        }
    }

    private static boolean isRead(List<Specification> channels, Quantity quantity) {
        return channels.stream().anyMatch(c -> c.quantity() == quantity && !c.derived());
    }

    public Optional<Specification> channel(Quantity quantity) {
        return channels.stream().filter(c -> c.quantity() == quantity).findFirst();
    }

    /** The channels whose values are read and not derived from others. */
    public List<Specification> read() {
        return channels.stream().filter(c -> !c.derived()).toList();
    }

    /** The key under which a row of readings holds this instrument's channel. */
    public String key(Quantity quantity) {
        return id + "/" + quantity.key();
    }
}
