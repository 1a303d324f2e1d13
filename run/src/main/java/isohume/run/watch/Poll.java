// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.quantity.Quantity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One poll as the watch gets it.
 *
 * @param humidity reference relative humidity, % RH, if every reference was there
 * @param target what the chamber was asked for
 * @param still whether the point had settled, so that nothing should move
 */
public record Poll(
        Instant at, List<Reading> readings, OptionalDouble humidity, Optional<Setpoint> target, boolean still) {
    public Poll {
        readings = List.copyOf(readings);
    }

    /** A good value. */
    Optional<Reading.Value> value(String channel) {
        for (Reading reading : readings) {
            if (reading instanceof Reading.Value value && value.channel().id().equals(channel)) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }

    OptionalDouble number(String channel) {
        Optional<Reading.Value> value = value(channel);
        return value.isPresent() ? OptionalDouble.of(value.get().shown().doubleValue()) : OptionalDouble.empty();
    }

    /** Good values of a quantity, but for one channel. */
    List<Reading.Value> others(Quantity quantity, String but) {
        List<Reading.Value> others = new ArrayList<>();
        for (Reading reading : readings) {
            if (reading instanceof Reading.Value value
                    && value.channel().quantity() == quantity
                    && !value.channel().id().equals(but)) {
                others.add(value);
            }
        }
        return others;
    }
}
