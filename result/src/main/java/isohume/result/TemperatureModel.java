// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.uncertainty.Budget;
import isohume.uncertainty.Input;
import isohume.uncertainty.Model;
import java.util.List;

/** Error of a temperature by comparison: {@code u − t}, with {@code u_} the reading and {@code t_} the reference, °C. */
final class TemperatureModel {
    private TemperatureModel() {}

    static Budget budget(String measurand, List<Input> lines) {
        return Budget.of(measurand, "K", lines, Parts.over(lines, List.of("u", "t"), new Difference()));
    }

    private static final class Difference implements Model {
        @Override
        public double of(double[] sums) {
            return sums[0] - sums[1];
        }

        @Override
        public void ofEach(double[][] sums, int trials, double[] out) {
            for (int k = 0; k < trials; k++) {
                out[k] = sums[0][k] - sums[1][k];
            }
        }
    }
}
