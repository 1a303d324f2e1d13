// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import java.util.Arrays;

/**
 * A quantity that drives others, and how far followers of every time constant are behind it: what the past still owes,
 * earlier set points included.
 */
public final class Lagged {
    private final double[] follower = new double[TimeConstants.COUNT];
    private double value = Double.NaN;
    private double at;

    /** The next value; times in seconds from any origin, rising. */
    public void take(double seconds, double next) {
        if (Double.isNaN(value)) {
            Arrays.fill(follower, next); // what was before is not known
        } else {
            double passed = seconds - at;
            for (int k = 0; k < follower.length; k++) {
                follower[k] += (next - follower[k]) * -StrictMath.expm1(-passed / TimeConstants.seconds(k));
            }
        }
        value = next;
        at = seconds;
    }

    /** The value less that of a follower with the k-th time constant; 0 before the first. */
    double behind(int k) {
        return Double.isNaN(value) ? 0 : value - follower[k];
    }

    /** The last value; NaN before the first. */
    public double value() {
        return value;
    }
}
