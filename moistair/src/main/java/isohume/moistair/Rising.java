// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * A rising function with its slope, and where it takes a value.
 *
 * <p>Newton's method, kept inside a bracket: a step that would leave the bracket is replaced by a halving, so it ends
 * wherever the start was.
 */
interface Rising {
    double at(double x);

    double slopeAt(double x);

    /** Newton's step from {@code x} towards where the function is {@code wanted}. */
    default double stepTo(double wanted, double x) {
        return (wanted - at(x)) / slopeAt(x);
    }

    /**
     * Where the function is {@code wanted}, by Newton's method alone from a start that is good.
     *
     * <p>The last step is at most 3e-6. Each step leaves the square of the one before times f''/2f', and that is at most
     * 0.005 for the logarithm of a vapour pressure in kelvin: so less than 1e-13.
     *
     * @return no number if a step leaves the bracket or there are too many
     */
    default double near(double wanted, double low, double high, double start) {
        double x = start;
        for (int i = 0; i < 8 && x > low && x < high; i++) {
            double step = stepTo(wanted, x);
            x += step;
            if (Math.abs(step) <= 3e-6) {
                return x;
            }
        }
        return Double.NaN;
    }

    /**
     * Where the function is {@code wanted}, which lies between its values at the ends of the bracket.
     *
     * @param tolerance the last step is at most this long; Newton's method is then far closer
     * @param mostSteps the steps after which {@link SolverFailed} is thrown
     */
    default double whereIs(double wanted, double low, double high, double start, double tolerance, int mostSteps) {
        double a = low;
        double b = high;
        double x = Math.min(Math.max(start, low), high);
        double miss = Double.NaN;
        for (int i = 0; i < mostSteps; i++) {
            miss = at(x) - wanted;
            if (miss < 0) {
                a = x;
            } else {
                b = x;
            }
            double next = x - miss / slopeAt(x);
            if (!(next >= a && next <= b)) {
                next = a + (b - a) / 2;
            }
            if (Math.abs(next - x) <= tolerance) {
                return next;
            }
            x = next;
        }
        throw new SolverFailed(wanted, x, miss, mostSteps);
    }
}
