// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/** The numbers of one column, nine bytes each, digit for digit; a file of 50 MB has millions. */
public final class Cells {
    /** Longer numbers are not kept. */
    public static final int MOST_DIGITS = 18;

    private static final byte GAP = Byte.MIN_VALUE;

    private long[] unscaled = new long[16];
    private byte[] scales = new byte[16];
    private int count;

    /** A number of at most {@link #MOST_DIGITS} digits and a scale of -100 to 100. */
    public void add(BigDecimal number) {
        add(number.unscaledValue().longValueExact(), (byte) number.scale());
    }

    /** A place without a number. */
    public void addGap() {
        add(0, GAP);
    }

    /** The number at a place, from 0; nothing at a gap. */
    public Optional<BigDecimal> get(int row) {
        return scales[row] == GAP ? Optional.empty() : Optional.of(BigDecimal.valueOf(unscaled[row], scales[row]));
    }

    private void add(long digits, byte scale) {
        if (count == unscaled.length) {
            unscaled = Arrays.copyOf(unscaled, count + count / 2);
            scales = Arrays.copyOf(scales, count + count / 2);
        }
        unscaled[count] = digits;
        scales[count++] = scale;
    }
}
