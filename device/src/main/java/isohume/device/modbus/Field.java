// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;

/**
 * A number in a device's registers and what it means: (number × scale + offset) in {@code unit}.
 *
 * @param scale not zero
 */
record Field(
        Table table, int address, NumberType type, WordOrder order, BigDecimal scale, BigDecimal offset, Unit unit) {
    Span span() {
        return new Span(table, address, type.words());
    }

    /** The value in the quantity's unit, unrounded; empty if the registers hold no number. */
    Optional<BigDecimal> value(List<Integer> registers) {
        return type.number(registers, order)
                .map(number -> unit.toQuantity(number.multiply(scale).add(offset)));
    }

    /** The registers for the nearest value that the device can hold; empty if the value is beyond them. */
    Optional<List<Integer>> registers(BigDecimal value) {
        BigDecimal number = unit.fromQuantity(value).subtract(offset).divide(scale, MathContext.DECIMAL128);
        return type.registers(number, order);
    }
}
