// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** Where the exponential and the logarithm come from, so that each formula is written once. */
enum Elementary {
    /** The same bits on every machine; everything that is released. */
    STRICT {
        @Override
        double exp(double x) {
            return StrictMath.exp(x);
        }

        @Override
        double log(double x) {
            return StrictMath.log(x);
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
    };

    abstract double exp(double x);

    abstract double log(double x);
}
