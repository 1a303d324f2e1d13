// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * The natural logarithm of a temperature in kelvin, as often as formulas need it: {@code ln T = ln 300 + 2 artanh z}, {@code
 * z = (T - 300) / (T + 300)}, by the series of artanh.
 *
 * <p>Only sums, products and quotients, so it is the same bits on every machine. From -51 to 132 °C the first term left
 * out is 2e-18 of the sum; beyond, {@code StrictMath} takes over.
 */
final class LogKelvin {
    private static final double CENTRE = 300;
    private static final double LOG_CENTRE = StrictMath.log(CENTRE);
    private static final double FARTHEST = 0.15;

    private LogKelvin() {}

    static double of(double kelvin) {
        double z = place(kelvin);
        return Math.abs(z) <= FARTHEST ? series(z) : StrictMath.log(kelvin);
    }

    /** The logarithms of the first temperatures; the same bits as one by one. */
    static void of(double[] kelvin, int count, double[] out) {
        boolean near = true;
        for (int i = 0; i < count; i++) {
            out[i] = place(kelvin[i]);
        }
        for (int i = 0; i < count && near; i++) {
            near = Math.abs(out[i]) <= FARTHEST;
        }
        if (near) {
            for (int i = 0; i < count; i++) {
                out[i] = series(out[i]);
            }
        } else {
            for (int i = 0; i < count; i++) {
                out[i] = of(kelvin[i]);
            }
        }
    }

    private static double place(double kelvin) {
        return (kelvin - CENTRE) / (kelvin + CENTRE);
    }

    /** Even and odd powers of the square apart: the processor works on both at once. */
    private static double series(double z) {
        double square = z * z;
        double fourth = square * square;
        double even = 1 + fourth * (1.0 / 5 + fourth * (1.0 / 9 + fourth * (1.0 / 13 + fourth * (1.0 / 17))));
        double odd = 1.0 / 3 + fourth * (1.0 / 7 + fourth * (1.0 / 11 + fourth * (1.0 / 15 + fourth * (1.0 / 19))));
        return LOG_CENTRE + 2 * z * (even + square * odd);
    }
}
