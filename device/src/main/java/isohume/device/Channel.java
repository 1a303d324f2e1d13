// SPDX-License-Identifier: Apache-2.0
package isohume.device;

import isohume.quantity.Quantity;

/**
 * One thing that an instrument shows.
 *
 * @param instrument the instrument's id in the laboratory, for example {@code mirror} or {@code A-1042}
 * @param name the channel's name on that instrument, unique there
 */
public record Channel(String instrument, String name, Quantity quantity) {
    /** The name that is unique on a bench: {@code instrument/name}. */
    public String id() {
        return instrument + "/" + name;
    }
}
