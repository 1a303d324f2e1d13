// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.quantity.Quantity;

/**
 * From where to where something can be measured.
 *
 * @param of whose range it is, as it stands in a sentence: {@code the certificate of REF-01}
 * @param quantity relative humidity, temperature or dew point
 * @param lowest in the quantity's unit
 * @param highest in the quantity's unit
 */
public record Range(String of, Quantity quantity, double lowest, double highest) {
    public Range {
        if (!(lowest <= highest)) {
            throw new IllegalArgumentException(
                    of + " has a lower and a higher end, were " + lowest + " and " + highest + " " + quantity.unit());
        }
    }
}
