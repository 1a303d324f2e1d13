// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Channel;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * One channel of a device and where its value lies.
 *
 * @param resolution the step that values are shown in, in the quantity's unit; above zero
 */
record Shown(Channel channel, Field field, BigDecimal resolution, Optional<Limits> limits) {
    /** The multiple of the resolution nearest to a value, halves to the even multiple, with the resolution's digits. */
    BigDecimal rounded(BigDecimal value) {
        BigDecimal step = resolution.stripTrailingZeros();
        return value.divide(step, 0, RoundingMode.HALF_EVEN).multiply(step).setScale(Math.max(0, step.scale()));
    }
}
