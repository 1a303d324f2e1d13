// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against polynomials known beforehand; NIST's data sets are in NistReferenceDataTest. */
class PolynomialTest {
    private static final double[] X = {10, 20, 30, 40, 50, 60, 70, 80, 90};

    private static double[] curve(double[] x, double noise, long seed, double... coefficients) {
        Random random = new Random(seed);
        return Arrays.stream(x)
                .map(value -> {
                    double y = 0;
                    for (int i = coefficients.length - 1; i >= 0; i--) {
                        y = y * value + coefficients[i];
                    }
                    return y + noise * random.nextGaussian();
                })
                .toArray();
    }

    @Test
    void an_exact_cubic_comes_back() {
        Polynomial cubic = Polynomial.ofOrder(3, X, curve(X, 0, 1, 0.3, -0.02, 1e-4, 2e-6));
        assertEquals(2e-6, cubic.coefficients().get(3).value(), 1e-17);
        assertEquals(0.3, cubic.coefficients().getFirst().value(), 1e-12);
        assertEquals(0.3 - 0.02 * 55 + 1e-4 * 3025 + 2e-6 * 166375, cubic.at(55).value(), 1e-13);
    }

    @Test
    void the_order_chosen_is_usually_the_true_one_and_seldom_lower() {
        int tooLow = 0;
        int right = 0;
        for (long seed = 1; seed <= 200; seed++) {
            Polynomial best = Polynomial.ofBestOrder(4, X, curve(X, 0.05, seed, 0.3, -0.02, 8e-4));
            tooLow += best.order() < 2 ? 1 : 0;
            right += best.order() == 2 ? 1 : 0;
        }
        assertEquals(0, tooLow, "seeds 1 to 200");
        assertTrue(right > 160, "seeds 1 to 200: " + right); // two tests at 5 % each may add a term by chance
    }

    @Test
    void the_curve_is_not_extrapolated() {
        Polynomial line = Polynomial.ofOrder(1, X, curve(X, 0, 1, 1, 2));
        assertEquals(21, line.at(10).value(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> line.at(95));
    }

    @Test
    void coefficients_stay_two_below_the_points() {
        assertThrows(IllegalArgumentException.class, () -> Polynomial.ofOrder(8, X, X));
    }
}
