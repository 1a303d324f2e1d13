// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.uncertainty.Budget;
import isohume.uncertainty.Input;
import java.util.List;

/** Error of a temperature by comparison: {@code u − t}, with {@code u_} the reading and {@code t_} the reference, °C. */
final class TemperatureModel {
    private TemperatureModel() {}

    static Budget budget(String measurand, List<Input> lines) {
        return Budget.of(measurand, "K", lines, Parts.over(lines, List.of("u", "t"), sums -> sums[0] - sums[1]));
    }
}
