// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import isohume.uncertainty.Budget;
import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Origin;
import java.util.List;

/**
 * The work of Monte Carlo: the error of a probe at 50 % RH and 23 °C against a mirror and a thermometer, fourteen inputs
 * of everyday size. {@code peers/numpy_model.py} holds the same model; both say the same or the comparison stops.
 */
public final class HumidityBudget {
    private static final double OFTEN = Double.POSITIVE_INFINITY;

    private HumidityBudget() {}

    public static Budget evaluate() {
        List<Input> lines = List.of(
                bell("d_cal", 12.0323, 0.05, OFTEN, "°C"),
                limits("d_drift", 0.05, "°C"),
                limits("d_res", 0.005, "°C"),
                limits("d_cont", 0.03, "°C"),
                bell("d_rep", 0, 0.01, 9, "°C"),
                limits("dp_mc", 50, "Pa"),
                bell("t_cal", 23, 0.02, OFTEN, "°C"),
                limits("t_drift", 0.02, "°C"),
                limits("t_unif", 0.1, "°C"),
                limits("t_stab", 0.02, "°C"),
                bell("e_eq", 0, 1e-4, OFTEN, "1"),
                bell("f_eq", 0, 1e-4, OFTEN, "1"),
                limits("u_res", 0.05, "% RH"),
                bell("u_rep", 50, 0.06, 9, "% RH"));
        return Budget.of("error", "% RH", lines, new HumidityError());
    }

    private static Input bell(String symbol, double estimate, double u, double freedom, String unit) {
        return new Input(
                symbol, symbol, estimate, unit, new Distribution.Normal(u), freedom, Origin.ASSUMED, "invented");
    }

    private static Input limits(String symbol, double halfWidth, String unit) {
        return Input.of(symbol, symbol, 0, unit, new Distribution.Rectangular(halfWidth), Origin.ASSUMED, "invented");
    }
}
