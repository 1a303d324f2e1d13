// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.Unit;
import isohume.quantity.Quantity;
import java.math.BigDecimal;

/**
 * Whether a logged value can be a reading at all, and not a code for trouble or a slip. The limits are wide of
 * everything that loggers of humidity are sold for (common practice, no source).
 */
final class Plausible {
    private Plausible() {}

    /** A value in the quantity's unit. */
    static boolean is(Quantity quantity, BigDecimal value) {
        if (!Unit.possible(quantity, value)) {
            return false;
        }
        double number = value.doubleValue();
        return switch (quantity) {
            case RELATIVE_HUMIDITY -> number >= -10 && number <= 120;
            case TEMPERATURE -> number >= -120 && number <= 300;
            case DEW_POINT -> number >= -120 && number <= 120;
            case PRESSURE -> number >= 1000 && number <= 2e6;
            case DEPOSIT, WATER_LEVEL -> true;
        };
    }
}
