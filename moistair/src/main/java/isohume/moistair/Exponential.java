// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The exponential, from a table of {@code e^(k/16)} and the series of what is left of the argument, at most 1/32.
 *
 * <p>Only sums and products, so it is the same bits on every machine. A table entry has a second part for what a double
 * cannot hold of it, and the first term that the series leaves out is 8e-20, so little more than the last rounding is
 * lost. From -40 to 20, {@code StrictMath} beyond.
 */
final class Exponential {
    private static final int STEPS = 16; // of the table for each unit; a power of two, so that k/16 is exact
    private static final int LOWEST = -40;
    private static final int HIGHEST = 20;
    private static final double TO_WHOLE = 0x1.8p52; // added and taken away again, it rounds to a whole number
    private static final double[] HIGH = new double[(HIGHEST - LOWEST) * STEPS + 1];
    private static final double[] LOW = new double[HIGH.length];

    static {
        MathContext digits = new MathContext(50);
        BigDecimal step = small(BigDecimal.ONE.divide(BigDecimal.valueOf(STEPS)), digits);
        BigDecimal power = BigDecimal.ONE.divide(step.pow(-LOWEST * STEPS, digits), digits);
        for (int k = 0; k < HIGH.length; k++) {
            HIGH[k] = power.doubleValue();
            LOW[k] = power.subtract(new BigDecimal(HIGH[k])).doubleValue();
            power = power.multiply(step, digits);
        }
    }

    private Exponential() {}

    static double of(double x) {
        return x >= LOWEST && x <= HIGHEST ? inside(x) : StrictMath.exp(x);
    }

    /** Replaces the first elements by their exponentials; the same bits as one by one. */
    static void of(double[] x, int count) {
        boolean inside = true;
        for (int i = 0; i < count; i++) {
            inside &= x[i] >= LOWEST && x[i] <= HIGHEST;
        }
        if (inside) {
            for (int i = 0; i < count; i++) {
                x[i] = inside(x[i]);
            }
        } else {
            for (int i = 0; i < count; i++) {
                x[i] = of(x[i]);
            }
        }
    }

    private static double inside(double x) {
        double whole = x * STEPS + TO_WHOLE;
        int k = (int) Double.doubleToRawLongBits(whole)
                - LOWEST * STEPS; // the low bits count from 0, negative ones too
        double r = x - (whole - TO_WHOLE) * (1.0 / STEPS); // exact
        double square = r * r;
        double high = 1.0 / 24 + r * (1.0 / 120) + square * (1.0 / 720 + r * (1.0 / 5040) + square * (1.0 / 40320));
        double rest = r + square * (1.0 / 2 + r * (1.0 / 6) + square * high);
        return HIGH[k] + (LOW[k] + HIGH[k] * rest);
    }

    /** Of a small number, to all digits of the context. */
    private static BigDecimal small(BigDecimal x, MathContext digits) {
        BigDecimal sum = BigDecimal.ONE;
        BigDecimal term = BigDecimal.ONE;
        for (int n = 1; n <= 40; n++) {
            term = term.multiply(x, digits).divide(BigDecimal.valueOf(n), digits);
            sum = sum.add(term, digits);
        }
        return sum;
    }
}
