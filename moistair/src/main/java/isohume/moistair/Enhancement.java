// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.Temperature;

/**
 * Enhancement factor after Greenspan: {@code ln f = α (1 - e/P) + β (P/e - 1)} with {@code α = Σ A[i] t^i} and
 * {@code ln β = Σ B[i] t^i}, t in degrees Celsius.
 *
 * <p>Source: Greenspan 1976, J. Res. NBS 80A, 41, coefficients on ITS-90; Hardy 1998 prints the same sets expanded in
 * kelvin.
 */
final class Enhancement {
    private static final Citation GREENSPAN = new Citation("Greenspan 1976, J. Res. NBS 80A, 41", "");

    private final Citation source;
    private final Span vouchedFor;
    private final double[] a;
    private final double[] b;

    private Enhancement(Citation source, Span vouchedFor, double[] a, double[] b) {
        this.source = source;
        this.vouchedFor = vouchedFor;
        this.a = a;
        this.b = b;
    }

    Citation source() {
        return source;
    }

    static Enhancement overWater() {
        return new Enhancement(
                GREENSPAN,
                new Span("enhancement factor over water", 0, 100),
                new double[] {3.53624e-4, 2.9328363e-5, 2.6168979e-7, 8.5813609e-9},
                new double[] {-1.07588e1, 6.3268134e-2, -2.5368934e-4, 6.3405286e-7});
    }

    /** The set for supercooled water. */
    static Enhancement overSupercooledWater() {
        return new Enhancement(
                GREENSPAN,
                new Span("enhancement factor over water", -50, 0),
                new double[] {3.62183e-4, 2.6061244e-5, 3.8667770e-7, 3.8268958e-9},
                new double[] {-1.07604e1, 6.3987441e-2, -2.6351566e-4, 1.6725084e-6});
    }

    static Enhancement overIce() {
        return new Enhancement(
                GREENSPAN,
                new Span("enhancement factor over ice", -100, 0.01),
                new double[] {3.64449e-4, 2.9367585e-5, 4.8874766e-7, 4.3669918e-9},
                new double[] {-1.07271e1, 7.6215115e-2, -1.7490155e-4, 2.4668279e-6});
    }

    /** The factor at a temperature, for pure saturation pressure {@code e} and total pressure {@code p} in Pa. */
    double at(Temperature t, double e, double p) {
        vouchedFor.require(t);
        double celsius = t.celsius();
        double alpha = polynomial(a, celsius);
        double beta = StrictMath.exp(polynomial(b, celsius));
        return StrictMath.exp(alpha * (1 - e / p) + beta * (p / e - 1));
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
