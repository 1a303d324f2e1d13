// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import java.math.BigDecimal;
import java.math.MathContext;

/** A formula was asked beyond the range that its source vouches for. */
public final class OutsideRange extends IllegalArgumentException {
    private static final long serialVersionUID = 1;
    private final String what;
    private final double asked;
    private final double lowest;
    private final double highest;
    private final String unit;

    OutsideRange(String what, double asked, double lowest, double highest, String unit) {
        super(what + " holds from " + shown(lowest) + " to " + shown(highest) + " " + unit + ", was asked at "
                + shown(asked) + " " + unit);
        this.what = what;
        this.asked = asked;
        this.lowest = lowest;
        this.highest = highest;
        this.unit = unit;
    }

    private static String shown(double value) {
        if (Double.isInfinite(value) || Double.isNaN(value)) {
            return Double.toString(value);
        }
        return new BigDecimal(value)
                .round(new MathContext(10))
                .stripTrailingZeros()
                .toPlainString();
    }

    public String what() {
        return what;
    }

    public double asked() {
        return asked;
    }

    public double lowest() {
        return lowest;
    }

    public double highest() {
        return highest;
    }

    public String unit() {
        return unit;
    }
}
