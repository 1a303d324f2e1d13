// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import isohume.device.Channel;
import java.util.ArrayList;
import java.util.List;

/**
 * Which channels a run lives on.
 *
 * @param chamber the chamber's id as an instrument
 * @param pressures chamber and mirror
 * @param instruments those under test
 */
public record Channels(
        String chamber,
        String dewPoint,
        String deposit,
        String temperature,
        List<String> pressures,
        List<String> instruments) {
    public Channels {
        pressures = List.copyOf(pressures);
        instruments = List.copyOf(instruments);
    }

    /** Every one without which no reading is whole. */
    List<String> needed() {
        List<String> needed = new ArrayList<>(List.of(dewPoint, deposit, temperature));
        needed.addAll(pressures);
        needed.addAll(instruments);
        return needed;
    }

    /** Whether a run cannot go on without it; a chamber that cannot be read cannot be told anything either. */
    boolean isNeeded(Channel channel) {
        return channel.instrument().equals(chamber) || needed().contains(channel.id());
    }

    boolean ofMirror(String channel) {
        return channel.equals(dewPoint) || channel.equals(deposit);
    }
}
