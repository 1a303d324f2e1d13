// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.uncertainty.Budget;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HumidityBudgetTest {
    @Test
    void many_trials_at_once_give_the_bits_of_single_ones_and_no_value_where_there_is_none() {
        Budget budget = HumidityBudget.evaluate();
        Random random = new Random(4);
        int trials = 600;
        double[][] inputs = new double[budget.inputs().size()][trials + 7];
        for (int i = 0; i < inputs.length; i++) {
            double u = budget.inputs().get(i).standardUncertainty();
            double estimate = budget.inputs().get(i).estimate();
            inputs[i] = random.doubles(trials + 7, estimate - 2 * u, estimate + 2 * u + 1e-9)
                    .toArray();
        }
        assertSame(budget, inputs, trials);
        inputs[0][300] = -60; // colder than the formula goes
        assertSame(budget, inputs, trials);
    }

    private static void assertSame(Budget budget, double[][] inputs, int trials) {
        double[] out = new double[trials + 7];
        budget.model().ofEach(inputs, trials, out);
        for (int k = 0; k < trials; k++) {
            double[] one = new double[inputs.length];
            for (int i = 0; i < one.length; i++) {
                one[i] = inputs[i][k];
            }
            if (one[0] < -50) {
                assertTrue(Double.isNaN(out[k]));
            } else {
                assertEquals(budget.model().of(one), out[k], 0);
            }
        }
    }
}
