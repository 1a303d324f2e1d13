// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

/**
 * Variates of the chi-squared distribution for any degrees of freedom above zero: twice a gamma of half the shape.
 *
 * <p>Gamma: Marsaglia and Tsang, ACM Trans. Math. Softw. 26 (2000) 363, for shapes from 1 up.
 */
final class ChiSquared {
    private static final double SQUEEZE = 0.0331;

    private final double shape;
    private final double d;
    private final double c;

    ChiSquared(double freedom) {
        shape = freedom / 2;
        d = (shape >= 1 ? shape : shape + 1) - 1.0 / 3;
        c = 1 / Math.sqrt(9 * d);
    }

    double draw(RandomStream stream) {
        if (shape >= 1) {
            return 2 * gamma(stream);
        }
        double u = 1 - stream.uniform(); // above zero
        return 2 * gamma(stream) * StrictMath.pow(u, 1 / shape);
    }

    private double gamma(RandomStream stream) {
        while (true) {
            double x = stream.normal();
            double root = 1 + c * x;
            if (root <= 0) {
                continue;
            }
            double v = root * root * root;
            double u = 1 - stream.uniform();
            if (u < 1 - SQUEEZE * x * x * x * x || StrictMath.log(u) < 0.5 * x * x + d * (1 - v + StrictMath.log(v))) {
                return d * v;
            }
        }
    }
}
