// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.series;

import static isohume.uncertainty.Printed.assertRelative;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.uncertainty.Coverage;
import isohume.uncertainty.Printed;
import isohume.uncertainty.RowByRow;
import isohume.uncertainty.fit.StraightLine;
import java.util.Random;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class SeriesTest {
    private static final String TABLE = "autocorrelation.csv";

    private static Series bath() {
        return Series.evenly(60, Printed.column(Printed.table("thermal_bath_series.csv"), "t_minus_50_degC"));
    }

    private static double printed(String id) {
        return Printed.row(TABLE, id).number("value");
    }

    @Test
    void the_thermal_bath_of_jcgm_gum_6_table_8() {
        Series bath = bath();
        assertRelative(printed("TBx-01"), bath.mean(), 1e-11, "mean");
        assertRelative(printed("TBx-02"), bath.standardDeviation(), 1e-11, "s");
        assertRelative(printed("TBx-03"), bath.lagOneAutocorrelation(), 1e-11, "r1");
        assertRelative(printed("TBx-08"), Series.effectiveNumber(100, printed("TBx-03")), 1e-11, "effective number");
        double corrected = printed("TBx-03") + (1 + 3 * printed("TBx-03")) / 99;
        assertRelative(corrected, bath.assumedAutocorrelation(), 1e-11, "freed from its bias");
        assertTrue(bath.effectiveNumber() < printed("TBx-08"));
        assertEquals(5940, bath.durationSeconds());
    }

    @Test
    void effective_numbers_of_known_coefficients_agree_with_the_exact_sum() {
        int compared = 0;
        for (Printed.Row row : Printed.table(TABLE)) {
            if (row.text("id").startsWith("NE-") && !row.text("id").contains("--")) {
                String quantity = row.text("quantity");
                int n = Integer.parseInt(quantity.replaceAll(".*\\(n=(\\d+),.*", "$1"));
                double rho = Double.parseDouble(quantity.replaceAll(".*rho=([0-9.]+)\\);.*", "$1"));
                assertRelative(row.numbers("value")[0], Series.effectiveNumber(n, rho), 1e-9, row.toString());
                compared++;
            }
        }
        assertEquals(42, compared);
    }

    @Test
    void the_slope_without_autocorrelation_is_ordinary_least_squares() {
        Drift drift = bath().drift();
        assertRelative(printed("TBx-10"), drift.over(60), 1e-9, "slope per minute");
    }

    @Test
    void autocorrelated_residuals_widen_the_slope_s_error() {
        assertTrue(bath().drift().standardErrorOver(60) > 2 * printed("TBx-11"), "against ordinary least squares");
    }

    @Test
    void independent_residuals_give_the_textbook_error_of_hipparchus() {
        double[] values = {1, 2.1, 2.9, 4.1, 4.9, 6.1, 6.9, 8.1, 8.9, 10.1}; // alternate about their line
        SimpleRegression regression = new SimpleRegression();
        for (int i = 0; i < values.length; i++) {
            regression.addData(i, values[i]);
        }
        Drift drift = Series.evenly(1, values).drift();
        assertEquals(0, drift.residualAutocorrelation(), "alternating residuals count as independent");
        assertRelative(regression.getSlope(), drift.slopePerSecond(), 1e-12, "slope");
        assertRelative(regression.getSlopeStdErr(), drift.standardError(), 1e-12, "standard error");
    }

    @Test
    void a_frozen_display_has_no_spread_and_says_so() {
        Series frozen = Series.evenly(5, 50.1, 50.1, 50.1, 50.1);
        assertTrue(frozen.isConstant());
        assertEquals(0, frozen.standardUncertaintyOfMean());
        assertEquals(0, frozen.lagOneAutocorrelation());
        assertEquals(1, frozen.drift().probabilityIfSteady());
    }

    @Test
    void two_readings_are_enough_for_a_mean_but_not_for_a_drift() {
        Series two = Series.evenly(5, 50.1, 50.3);
        assertEquals(50.2, two.mean(), 1e-12);
        assertEquals(2, two.effectiveNumber());
        assertEquals(1, two.degreesOfFreedom());
        assertThrows(IllegalArgumentException.class, two::drift);
        assertThrows(IllegalArgumentException.class, () -> Series.evenly(5, 50.1));
    }

    @Test
    void times_must_increase() {
        assertThrows(IllegalArgumentException.class, () -> Series.of(new double[] {0, 5, 5}, new double[] {1, 2, 3}));
    }

    /** Series with a known mean of zero; the counts depend on the seed, the limits on far more series than these. */
    @Test
    void intervals_of_autocorrelated_readings_hold_the_truth_nearly_as_often_as_they_say() {
        long seed = 1;
        Random random = new Random(seed);
        int trials = 4000;
        int held = 0;
        int heldByPlainMean = 0;
        int alarms = 0;
        for (int trial = 0; trial < trials; trial++) {
            Series series = Series.evenly(1, autoregressive(30, 0.8, random));
            double factor = Coverage.factor(0.9545, series.degreesOfFreedom());
            held += Math.abs(series.mean()) <= factor * series.standardUncertaintyOfMean() ? 1 : 0;
            double plain = series.standardDeviation() / Math.sqrt(30);
            heldByPlainMean += Math.abs(series.mean()) <= 2 * plain ? 1 : 0;
            alarms += series.drift().differsFromZero(0.95) ? 1 : 0;
        }
        String found = "seed " + seed + ": " + held + ", " + heldByPlainMean + ", " + alarms + " of " + trials;
        assertTrue(held > 0.87 * trials, found);
        assertTrue(heldByPlainMean < 0.6 * trials, found);
        assertTrue(alarms < 0.13 * trials, found);
    }

    private static double[] autoregressive(int n, double rho, Random random) {
        double[] values = new double[n];
        values[0] = random.nextGaussian();
        for (int i = 1; i < n; i++) {
            values[i] = rho * values[i - 1] + Math.sqrt(1 - rho * rho) * random.nextGaussian();
        }
        return values;
    }

    @Test
    void every_figure_of_the_table() {
        try (RowByRow rows = RowByRow.of(TABLE)) {
            rows.elsewhere("TBx-(0[1238]|1[01])", "SeriesTest.the_thermal_bath_of_jcgm_gum_6_table_8");
            rows.elsewhere("NE-\\d+-[0-9.]+", "SeriesTest.effective_numbers_of_known_coefficients");
            rows.without(
                    "NE-\\d+--0.3", "a negative autocorrelation never makes readings worth more than their number");
            rows.elsewhere("SR-.*-r1", "NistReferenceDataTest.univariate_statistics");
            rows.without("SR-.*-neff|TBx-0[79]", "n(1 - r)/(1 + r) is the limit of what is offered, the exact sum");
            rows.without("SR-.*-(vn|T)|TBx-0[56]", "von Neumann's ratio is not offered: the autocorrelation is");
            rows.without("TBx-04", "of the autocorrelations only that of neighbours is offered");
            rows.without("TB-[1-7]|TBx-ar1-phi", "fits of autoregressive models are not offered");
            Series bath = bath();
            rows.is("TB-8", bath.standardDeviation() / Math.sqrt(bath.count()));
            double[] readings = Printed.column(Printed.table("thermal_bath_series.csv"), "t_minus_50_degC");
            double[] minutes = new double[readings.length];
            java.util.Arrays.setAll(minutes, i -> i);
            MannKendall trend = MannKendall.of(minutes, readings);
            rows.is("TBx-13", (double) trend.s());
            rows.is("TBx-14", trend.variance());
            rows.is("TBx-15", trend.z());
            rows.is("TBx-16", trend.probabilityIfSteady());
            StraightLine line = StraightLine.unweighted(minutes, readings);
            double t = Math.abs(line.slope()) / line.slopeUncertainty();
            rows.within(1e-8, "TBx-12", 2 * new TDistribution(98).cumulativeProbability(-t));
        }
    }
}
