// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

/**
 * How far the mean square that a fit leaves over is to be believed.
 *
 * @param worth independent readings for each one, by the likeness of neighbouring residuals that is still left
 *     (first-order autoregression): (1 - r) / (1 + r)
 * @param excess how much greater the mean square left over is where the offset shows, that is where the record changes
 *     quickly, than it is on the whole; at least 1. Lags of another form than the fitted one leave their traces there. A
 *     few such readings tell their own scatter badly, so it is raised for the three parameters that they decide
 */
record Trust(double worth, double excess) {
    /** Δχ² of so many readings with one mean square left over against a lower one. */
    double unlike(int count, double leftOver, double lower) {
        return worth * count * StrictMath.log(1 + (leftOver - lower) / (excess * lower));
    }

    /** What is left over, reading after reading. */
    static final class Residuals {
        private double before = Double.NaN;
        private double products;
        private double squares;
        private int count;
        private double weights;
        private double weighted;
        private double fourth;

        void add(double residual, double slope) {
            double weight = slope * slope;
            weights += weight;
            weighted += weight * residual * residual;
            fourth += weight * weight;
            squares += residual * residual;
            products += Double.isNaN(before) ? 0 : residual * before;
            before = residual;
            count++;
        }

        Trust trust(double mean, double floor) {
            if (!(weights > 0) || !(squares > 0)) {
                return new Trust(1, 1);
            }
            double r = Math.clamp(products / squares + 1.0 / count, 0, 0.99);
            double telling = weights * weights / fourth;
            double scarce = telling > 6 ? telling / (telling - 3) : 2;
            return new Trust(
                    Math.max(4.0 / count, (1 - r) / (1 + r)),
                    Math.max(1, (weighted / weights + floor) / mean) * scarce);
        }
    }
}
