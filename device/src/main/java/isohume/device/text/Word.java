// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import isohume.device.Unit;
import isohume.device.driver.Meaning;
import isohume.device.driver.Shown;
import java.util.Map;
import java.util.Optional;

/**
 * A channel and the group that its number stands in.
 *
 * @param meaning what the number means
 * @param units the group that tells the unit, and the units by what stands there; they then take the place of the
 *     meaning's
 * @param decimalComma whether the number is written with a comma
 */
record Word(Shown shown, String group, Meaning meaning, Optional<Units> units, boolean decimalComma) {
    /** Where a reply tells its unit, and how it calls the units. */
    record Units(String group, Map<String, Unit> words) {}
}
