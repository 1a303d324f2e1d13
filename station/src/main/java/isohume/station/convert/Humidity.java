// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

import isohume.quantity.DewPoint;
import isohume.quantity.RelativeHumidity;

/** The one measure of humidity that is known. */
public sealed interface Humidity {
    /** A dew or frost point, at the pressure of the air. */
    record Dew(DewPoint point) implements Humidity {}

    /** Relative humidity over liquid water. */
    record Relative(RelativeHumidity humidity) implements Humidity {}
}
