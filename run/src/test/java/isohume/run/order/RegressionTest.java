// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RegressionTest {
    /**
     * Against the closed form for a mean with a conjugate prior (Gelman et al., Bayesian Data Analysis, normal data with a
     * conjugate prior): with prior mean 0 worth κ₀ = 1/V observations and ν₀, σ₀², after n observations with mean m the mean
     * is n m / (κ₀ + n), and ν σ² = ν₀ σ₀² + Σ(y − m)² + κ₀ n m² / (κ₀ + n).
     */
    @Test
    void one_coefficient_is_the_conjugate_mean_of_normal_data() {
        double v = 0.5;
        double[] y = {1.2, 0.7, 1.9, 1.1};
        Regression regression = new Regression(new double[] {Math.sqrt(v)}, 0.3, 4);
        double mean = 0;
        for (double each : y) {
            regression.observe(new double[] {1}, each);
            mean += each / y.length;
        }
        double about = 0;
        for (double each : y) {
            about += (each - mean) * (each - mean);
        }
        double kappa = 1 / v;
        int n = y.length;
        double squares = 4 * 0.09 + about + kappa * n * mean * mean / (kappa + n);
        assertEquals(n * mean / (kappa + n), regression.mean(new double[] {1}), 1e-12);
        assertEquals(squares / (4 + n - 2), regression.noise(), 1e-12);
        assertEquals(regression.noise() / (kappa + n), regression.doubt(new double[] {1}), 1e-12);
    }

    /** With a prior that says nothing and exact data on a line, the line. */
    @Test
    void two_coefficients_find_a_straight_line() {
        Regression regression = new Regression(new double[] {1e4, 1e4}, 1e-3, 3);
        for (double x = -3; x <= 3; x++) {
            regression.observe(new double[] {1, x}, 2 - 0.5 * x);
        }
        assertEquals(2 - 0.5 * 10, regression.mean(new double[] {1, 10}), 1e-6);
    }
}
