// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.fit;

/** Checks on what is to be fitted. */
final class Points {
    private Points() {}

    static void require(double[] x, double[] y, int least, String what) {
        if (x.length != y.length) {
            throw new IllegalArgumentException(what + " needs as many x as y, got " + x.length + " and " + y.length);
        }
        if (x.length < least) {
            throw new IllegalArgumentException(what + " takes at least " + least + " points, got " + x.length);
        }
        for (int i = 0; i < x.length; i++) {
            if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
                throw new IllegalArgumentException(
                        "point " + (i + 1) + " of " + what + " is not finite: " + x[i] + ", " + y[i]);
            }
        }
    }

    static void requireUncertainties(double[] u, int count, String axis) {
        if (u.length != count) {
            throw new IllegalArgumentException(
                    "every point needs a standard uncertainty in " + axis + ": " + u.length + " for " + count);
        }
        for (double value : u) {
            if (!(value > 0) || Double.isInfinite(value)) {
                throw new IllegalArgumentException(
                        "standard uncertainties in " + axis + " must be finite and above zero, was " + value);
            }
        }
    }

    static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        double first = sum / values.length;
        double rest = 0;
        for (double value : values) {
            rest += value - first;
        }
        return first + rest / values.length;
    }
}
