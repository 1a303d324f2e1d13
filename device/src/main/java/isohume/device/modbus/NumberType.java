// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** How a number lies in registers. Signed numbers are two's complement, {@code FLOAT32} is IEEE 754 binary32. */
enum NumberType {
    INT16(1, Short.MIN_VALUE, Short.MAX_VALUE),
    UINT16(1, 0, 0xFFFF),
    INT32(2, Integer.MIN_VALUE, Integer.MAX_VALUE),
    UINT32(2, 0, 0xFFFF_FFFFL),
    FLOAT32(2, 0, 0);

    private final int words;
    private final BigDecimal least;
    private final BigDecimal most;

    NumberType(int words, long least, long most) {
        this.words = words;
        this.least = BigDecimal.valueOf(least);
        this.most = BigDecimal.valueOf(most);
    }

    /** How many registers it takes. */
    int words() {
        return words;
    }

    /** The exact number in these {@link #words} registers; empty for a float that is no number. */
    Optional<BigDecimal> number(List<Integer> registers, WordOrder order) {
        int bits = joined(registers, order);
        return switch (this) {
            case INT16 -> Optional.of(BigDecimal.valueOf((short) bits));
            case UINT16 -> Optional.of(BigDecimal.valueOf(bits & 0xFFFF));
            case INT32 -> Optional.of(BigDecimal.valueOf(bits));
            case UINT32 -> Optional.of(BigDecimal.valueOf(Integer.toUnsignedLong(bits)));
            case FLOAT32 -> {
                float real = Float.intBitsToFloat(bits);
                yield Float.isFinite(real) ? Optional.of(new BigDecimal((double) real)) : Optional.empty();
            }
        };
    }

    /** The registers that hold the nearest number of this type; empty if it is out of range. */
    Optional<List<Integer>> registers(BigDecimal number, WordOrder order) {
        if (this == FLOAT32) {
            float real = number.floatValue();
            return Float.isFinite(real) ? Optional.of(split(Float.floatToIntBits(real), order)) : Optional.empty();
        }
        BigDecimal whole = number.setScale(0, RoundingMode.HALF_EVEN);
        if (whole.compareTo(least) < 0 || whole.compareTo(most) > 0) {
            return Optional.empty();
        }
        int bits = (int) whole.longValueExact();
        return Optional.of(words == 1 ? List.of(bits & 0xFFFF) : split(bits, order));
    }

    private static int joined(List<Integer> registers, WordOrder order) {
        if (registers.size() == 1) {
            return registers.getFirst();
        }
        int first = registers.getFirst();
        int second = registers.getLast();
        return order == WordOrder.BIG ? first << 16 | second : second << 16 | first;
    }

    private static List<Integer> split(int bits, WordOrder order) {
        int high = bits >>> 16;
        int low = bits & 0xFFFF;
        return order == WordOrder.BIG ? List.of(high, low) : List.of(low, high);
    }
}
