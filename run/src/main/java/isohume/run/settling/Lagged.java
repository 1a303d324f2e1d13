// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import java.util.Arrays;

/**
 * A quantity that drives others, and how far followers of every time constant are behind it: what the past still owes,
 * earlier set points included.
 */
public final class Lagged {
    private static final int SOON = 3; // of the time constants, 80 s

    private final double[] follower = new double[TimeConstants.COUNT];
    private double value = Double.NaN;
    private double at;
    private double passed;

    /** The next value; times in seconds from any origin. A clock that is set back lets no time pass. */
    public void take(double seconds, double next) {
        if (Double.isNaN(value)) {
            Arrays.fill(follower, next); // what was before is not known
        } else {
            double since = Math.max(0, seconds - at);
            passed += since;
            for (int k = 0; k < follower.length; k++) {
                follower[k] += (next - follower[k]) * -StrictMath.expm1(-since / TimeConstants.seconds(k));
            }
        }
        value = next;
        at = seconds;
    }

    /** The value less that of a follower with the k-th time constant; 0 before the first. */
    double behind(int k) {
        return Double.isNaN(value) ? 0 : value - follower[k];
    }

    /** Whether it keeps to so much over a minute or two, and has been seen long enough to know. */
    boolean atRest(double width) {
        return passed >= 3 * TimeConstants.seconds(SOON) && Math.abs(behind(SOON)) <= width;
    }

    /** Where a follower with the k-th time constant is; the last value before there is a second. */
    double follower(int k) {
        return follower[k];
    }

    /** The last value; NaN before the first. */
    public double value() {
        return value;
    }
}
