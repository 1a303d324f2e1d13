// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import java.util.List;

/**
 * Which channels of a bench are its references, by channel id.
 *
 * @param deposit the channel on which the mirror reports the phase of its deposit
 * @param instruments channel ids of the instruments under test that are judged
 */
public record Roles(
        String dewPoint,
        String deposit,
        String temperature,
        String pressure,
        String mirrorPressure,
        List<String> instruments) {
    public Roles {
        instruments = List.copyOf(instruments);
    }

    List<String> references() {
        return List.of(dewPoint, deposit, temperature, pressure, mirrorPressure);
    }
}
