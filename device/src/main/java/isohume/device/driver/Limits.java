// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import java.math.BigDecimal;

/** From {@code low} to {@code high}, both included, in the quantity's unit. */
public record Limits(BigDecimal low, BigDecimal high) {
    /** Whether the value lies within. */
    public boolean hold(BigDecimal value) {
        return low.compareTo(value) <= 0 && value.compareTo(high) <= 0;
    }

    /** As people write it. */
    public String in(String unit) {
        return low.toPlainString() + " to " + high.toPlainString() + (unit.isEmpty() ? "" : " " + unit);
    }
}
