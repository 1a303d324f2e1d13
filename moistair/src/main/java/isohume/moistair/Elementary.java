// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** Where the exponential and the logarithm come from, so that each formula is written once. */
enum Elementary {
    /** The same bits on every machine; everything that is released. */
    STRICT {
        @Override
        double exp(double x) {
            return Exponential.of(x);
        }

        @Override
        double log(double x) {
            return StrictMath.log(x);
        }

        @Override
        void exp(double[] x, int count) {
            Exponential.of(x, count);
        }
    },
    /** What the machine does fastest, within one unit of the last place; for previews only. */
    FAST {
        @Override
        double exp(double x) {
            return Math.exp(x);
        }

        @Override
        double log(double x) {
            return Math.log(x);
        }

        @Override
        void exp(double[] x, int count) {
            for (int i = 0; i < count; i++) {
                x[i] = Math.exp(x[i]);
            }
        }
    };

    private static final double NEAR_ZERO = 0x1p-5; // where the first term that the series leaves out is 3e-17

    abstract double exp(double x);

    abstract double log(double x);

    /** Replaces the first elements by their exponentials. */
    abstract void exp(double[] x, int count);

    /** The exponential of what is usually near zero; then by its series, which is the same bits on every machine too. */
    double expNearZero(double x) {
        return Math.abs(x) <= NEAR_ZERO ? series(x) : exp(x);
    }

    /** Replaces the first elements by their {@link #expNearZero}. */
    void expNearZero(double[] x, int count) {
        boolean near = true;
        for (int i = 0; i < count && near; i++) {
            near = Math.abs(x[i]) <= NEAR_ZERO;
        }
        if (near) {
            for (int i = 0; i < count; i++) {
                x[i] = series(x[i]);
            }
        } else {
            for (int i = 0; i < count; i++) {
                x[i] = expNearZero(x[i]);
            }
        }
    }

    private static double series(double x) {
        double square = x * x;
        double high = 1.0 / 24 + x * (1.0 / 120) + square * (1.0 / 720 + x * (1.0 / 5040));
        return 1 + (x + square * (1.0 / 2 + x * (1.0 / 6) + square * high));
    }
}
