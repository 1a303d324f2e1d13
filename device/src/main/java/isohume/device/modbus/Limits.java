// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import java.math.BigDecimal;

/** From {@code low} to {@code high}, both included, in the quantity's unit. */
record Limits(BigDecimal low, BigDecimal high) {
    boolean hold(BigDecimal value) {
        return low.compareTo(value) <= 0 && value.compareTo(high) <= 0;
    }

    String in(String unit) {
        return low.toPlainString() + " to " + high.toPlainString() + (unit.isEmpty() ? "" : " " + unit);
    }
}
