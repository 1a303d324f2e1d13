// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.quantity.Quantity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Names of channels: a quantity's key, perhaps with something after it, and {@code mirror_pressure}. */
final class Channels {
    static final String MIRROR_PRESSURE = "mirror_pressure";
    static final String KNOWN = "relative_humidity, temperature, dew_point, pressure, mirror_pressure, deposit";

    private static final List<Quantity> QUANTITIES = List.of(
            Quantity.RELATIVE_HUMIDITY, Quantity.TEMPERATURE, Quantity.DEW_POINT, Quantity.PRESSURE, Quantity.DEPOSIT);

    private Channels() {}

    /** The quantity of a channel with this name. */
    static Optional<Quantity> quantity(String channel) {
        if (channel.equals(MIRROR_PRESSURE)) {
            return Optional.of(Quantity.PRESSURE);
        }
        if (!channel.matches("[a-z][a-z0-9_]{0,63}")) {
            return Optional.empty();
        }
        return QUANTITIES.stream()
                .filter(q -> channel.equals(q.key()) || channel.startsWith(q.key() + "_"))
                .max(Comparator.comparingInt(q -> q.key().length()));
    }
}
