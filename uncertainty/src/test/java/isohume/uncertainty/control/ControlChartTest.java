// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.uncertainty.Printed;
import isohume.uncertainty.control.ControlChart.Signal;
import java.util.List;
import org.junit.jupiter.api.Test;

class ControlChartTest {
    private static final ControlChart CHART = new ControlChart(10, 1);

    @Test
    void limits_of_individuals_use_the_published_constant() {
        double d2 = Printed.table("control_chart_constants.csv").stream()
                .filter(row -> row.text("n").equals("2") && row.text("constant").equals("d2"))
                .findFirst()
                .orElseThrow()
                .number("check_value");
        ControlChart chart = ControlChart.fromMovingRange(10, 12, 11, 13);
        assertEquals(5.0 / 3 / d2, chart.sigma(), 1e-7);
        assertEquals(11.5 + 3 * 5.0 / 3 / d2, chart.upperActionLimit(), 1e-6);
    }

    /** Of individuals: 3/d2 for n = 2 (E2), which the rules print rounded. Constants of subgroups have no chart here. */
    @Test
    void limits_of_individuals_lie_2_66_mean_moving_ranges_out() {
        double e2 = Printed.table("control_chart_constants.csv").stream()
                .filter(row -> row.text("n").equals("2") && row.text("constant").equals("E2"))
                .findFirst()
                .orElseThrow()
                .number("value");
        ControlChart chart = ControlChart.fromMovingRange(10, 12, 11, 13); // ranges 2, 1, 2
        assertEquals(e2, (chart.upperActionLimit() - chart.centre()) / (5.0 / 3), 1e-7, "E2");
        assertEquals(2.66, (chart.centre() - chart.lowerActionLimit()) / (5.0 / 3), 0.005, "X-LIM, as printed");
    }

    @Test
    void a_value_beyond_three_sigma_calls_for_action_and_beyond_two_warns() {
        assertEquals(List.of(Signal.IN_CONTROL, Signal.WARNING, Signal.ACTION), CHART.judge(10.5, 7.9, 13.1));
    }

    @Test
    void two_of_three_beyond_two_sigma_on_one_side_call_for_action() {
        assertEquals(Signal.ACTION, CHART.judge(12.1, 10, 12.1).getLast());
        assertEquals(Signal.WARNING, CHART.judge(12.1, 10, 7.9).getLast());
    }

    @Test
    void four_of_five_beyond_one_sigma_on_one_side_call_for_action() {
        assertEquals(Signal.ACTION, CHART.judge(11.1, 11.2, 10, 11.1, 11.3).getLast());
        assertEquals(Signal.IN_CONTROL, CHART.judge(11.1, 10.9, 10, 11.1, 11.3).getLast());
    }

    @Test
    void eight_on_one_side_call_for_action() {
        List<Signal> signals = CHART.judge(10.1, 10.2, 10.1, 10.3, 10.1, 10.2, 10.1, 10.2);
        assertEquals(Signal.IN_CONTROL, signals.get(6));
        assertEquals(Signal.ACTION, signals.get(7));
    }

    /** By hand from the definition: variance factor 0.04 after one value, 0.04 + 0.64·0.04 after two. */
    @Test
    void moving_average_limits_widen_to_their_asymptote() {
        MovingAverageChart chart = new MovingAverageChart(10, 1, 0.2, 3);
        List<MovingAverageChart.Point> points = chart.follow(11, 11);
        assertEquals(10.2, points.get(0).average(), 1e-12);
        assertEquals(10.36, points.get(1).average(), 1e-12);
        assertEquals(10 + 3 * 0.2, points.get(0).upper(), 1e-12);
        assertEquals(10 + 3 * Math.sqrt(0.04 * 1.64), points.get(1).upper(), 1e-12);
        assertFalse(points.get(1).isOutOfControl());
        double[] shifted = new double[20];
        java.util.Arrays.fill(shifted, 11.2);
        List<MovingAverageChart.Point> followed = chart.follow(shifted);
        assertTrue(followed.getLast().isOutOfControl());
        assertEquals(10 + 3 * Math.sqrt(0.2 / 1.8), followed.getLast().upper(), 1e-3, "asymptote");
    }
}
