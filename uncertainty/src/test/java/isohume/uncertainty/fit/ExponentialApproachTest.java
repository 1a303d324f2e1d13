// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.fit;

import static isohume.uncertainty.Printed.assertRelative;
import static org.junit.jupiter.api.Assertions.assertEquals;

import isohume.uncertainty.Printed;
import isohume.uncertainty.RowByRow;
import isohume.uncertainty.fit.ExponentialApproach.Outcome;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against a fit of the same record by scipy (step_response.csv) and curves known beforehand. */
class ExponentialApproachTest {
    private static double fit(String id) {
        return Printed.row("step_response.csv", id).number("value");
    }

    @Test
    void a_noisy_first_order_response_as_fitted_by_scipy() {
        List<Printed.Row> rows = Printed.table("step_response_data.csv");
        ExponentialApproach found =
                ExponentialApproach.single(Printed.column(rows, "t_s"), Printed.column(rows, "y_noisy"));
        ExponentialApproach.Term term = found.terms().getFirst();
        assertEquals(Outcome.FOUND, found.outcome());
        assertRelative(fit("FIT-y_inf"), found.steadyValue().value(), 1e-8, "y_inf");
        assertRelative(fit("FIT-y_0"), found.at(0), 1e-8, "y_0");
        assertRelative(fit("FIT-tau"), term.timeConstant().value(), 1e-8, "tau");
        assertRelative(fit("FIT-u(y_inf)"), found.steadyValue().standardUncertainty(), 1e-6, "u(y_inf)");
        assertRelative(fit("FIT-u(tau)"), term.timeConstant().standardUncertainty(), 1e-6, "u(tau)");
        assertRelative(fit("FIT-s"), found.scatter(), 1e-8, "s");
    }

    @Test
    void two_time_constants_known_beforehand_come_back() {
        double[] t = seconds(10, 120);
        double[] y = Arrays.stream(t)
                .map(s -> 50 + 30 * StrictMath.exp(-s / 40) + 2 * StrictMath.exp(-s / 300))
                .toArray();
        ExponentialApproach found = ExponentialApproach.twofold(t, y);
        assertEquals(50, found.steadyValue().value(), 1e-6);
        assertEquals(40, found.terms().get(0).timeConstant().value(), 1e-5);
        assertEquals(300, found.terms().get(1).timeConstant().value(), 1e-4);
        assertEquals(30 * StrictMath.exp(-15.0) + 2 * StrictMath.exp(-2.0), found.stillToCome(600), 1e-9);
    }

    @Test
    void a_record_without_a_step_shows_no_time_constant() {
        double[] t = seconds(5, 12);
        double[] flat = new double[t.length];
        Arrays.fill(flat, 50.1);
        assertEquals(
                Outcome.NOT_SHOWN_BY_THE_RECORD,
                ExponentialApproach.single(t, flat).outcome());
    }

    @Test
    void a_straight_ramp_shows_no_time_constant() {
        double[] t = seconds(5, 30);
        double[] ramp = Arrays.stream(t).map(s -> 20 + 0.01 * s).toArray();
        ExponentialApproach found = ExponentialApproach.single(t, ramp);
        assertEquals(Outcome.NOT_SHOWN_BY_THE_RECORD, found.outcome());
    }

    private static double[] seconds(double step, int count) {
        double[] seconds = new double[count];
        Arrays.setAll(seconds, i -> i * step);
        return seconds;
    }

    @Test
    void every_figure_of_the_table() {
        double[] t = seconds(0.25, 40);
        double[] y = Arrays.stream(t).map(s -> 1 - StrictMath.exp(-s)).toArray();
        ExponentialApproach unit = ExponentialApproach.single(t, y); // time constant 1, from 0 to 1
        try (RowByRow rows = RowByRow.of("step_response.csv")) {
            rows.without("FIT-u\\(y_0\\)", "the uncertainty of the start is not offered");
            rows.elsewhere("FIT-.*", "ExponentialApproachTest.a_noisy_first_order_response_as_fitted_by_scipy");
            for (String time : new String[] {"0.5", "1", "2", "3", "4", "5", "6", "7"}) {
                rows.within(1e-8, "F-" + time, unit.at(Double.parseDouble(time)));
            }
            rows.within(1e-8, "T-63", unit.at(1));
            rows.without("T-0.*|R-1090|H", "times to reach a fraction are not offered: what is still to come is");
        }
    }
}
