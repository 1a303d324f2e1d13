// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.quantity.DewPoint;
import isohume.quantity.Temperature;
import java.util.Optional;

/**
 * The two streams that are mixed, as they are at their best or as they are now.
 *
 * @param driest frost point of the dry stream
 * @param wettest dew point of the wet stream at its wettest
 * @param saturator where the saturator follows the chamber; empty where it is always at its wettest
 */
public record Streams(DewPoint driest, DewPoint wettest, Optional<Follows> saturator) {
    /**
     * A saturator that takes the chamber's temperature between two ends, so that the wet stream is no wetter than it has
     * to be.
     */
    public record Follows(Temperature lowest, Temperature highest) {
        public Follows {
            if (lowest.compareTo(highest) >= 0) {
                throw new IllegalArgumentException("a saturator follows from a lower to a higher temperature, were "
                        + lowest.celsius() + " and " + highest.celsius() + " °C");
            }
        }
    }

    /** The dew point of the wet stream while the chamber has a temperature. */
    public DewPoint wet(Temperature chamber) {
        if (saturator.isEmpty()) {
            return wettest;
        }
        Follows follows = saturator.get();
        double celsius = Math.clamp(
                chamber.celsius(), follows.lowest().celsius(), follows.highest().celsius());
        return DewPoint.overWater(Temperature.ofCelsius(Math.min(celsius, wettest.celsius())));
    }

    /** With other ends, as they were observed. */
    public Streams observed(Optional<DewPoint> dryFloor, Optional<DewPoint> wetCeiling) {
        return new Streams(dryFloor.orElse(driest), wetCeiling.orElse(wettest), saturator);
    }
}
