// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import isohume.uncertainty.montecarlo.MonteCarlo;
import isohume.uncertainty.series.Series;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * Every figure of the clauses and annexes of JCGM 100:2008 (gum_misc.csv), and of the examples of JCGM GUM-5:2026
 * (gum5_examples.csv), that has to do with what is offered here.
 */
class GumClausesTest {
    @Test
    void every_figure_of_the_guide_s_clauses() {
        try (RowByRow rows = RowByRow.of("gum_misc.csv")) {
            normalFactors(rows);
            typeAAndB(rows);
            welchAndSatterthwaite(rows);
            rounding(rows);
            rows.without("E1-.*", "how uncertain an s of few readings is; no figure of it is offered, only t");
        }
    }

    private static void normalFactors(RowByRow rows) {
        String[] percent = {"68.27", "90", "95", "95.45", "99", "99.73"};
        for (int i = 0; i < percent.length; i++) {
            double factor = Coverage.factor(Double.parseDouble(percent[i]) / 100, Double.POSITIVE_INFINITY);
            rows.within(2e-11, "G1-" + (i + 1), factor);
        }
    }

    private static void typeAAndB(RowByRow rows) {
        Series observed = Series.evenly(1, Printed.row("gum_misc.csv", "A443-1").numbers("value"));
        rows.is("A443-2", observed.mean());
        rows.is("A443-3", observed.standardDeviation());
        rows.is("A443-4", observed.standardDeviation() / Math.sqrt(20));
        rows.is("B445", new Distribution.Rectangular(4).standardUncertainty());
        rows.is("B446", new Distribution.Triangular(4).standardUncertainty());
        double infinite = Double.POSITIVE_INFINITY;
        rows.is("B434", new Distribution.Expanded(129, Coverage.factor(0.99, infinite)).standardUncertainty());
        rows.is("B435", 0.04 / Coverage.factor(0.5, infinite));
    }

    private static void welchAndSatterthwaite(RowByRow rows) {
        Budget product = GumExamplesTest.product();
        rows.is("G41-07", 100 * product.combined());
        rows.is("G41-08", product.effectiveDegreesOfFreedom());
        rows.is("G41-09", Coverage.factor(0.95, 19));
        rows.elsewhere("G41-10", "GumExamplesTest.g41_welch_and_satterthwaite");
        rows.is("G42-1", Input.degreesOfFreedomFromReliability(0.25));
        rows.is("G42-2", Input.degreesOfFreedomFromReliability(0.5));
        rows.is("G42-3", Input.degreesOfFreedomFromReliability(0.1));
    }

    private static void rounding(RowByRow rows) {
        rows.without("R726-1", "10.47 goes to 11 there as a choice; here to 10, since that cuts less than 5 %");
        rows.is("R726-2", Rounded.of(0, 28.05).uncertainty().doubleValue());
        rows.is("R726-3", Rounded.of(10.05762, 0.027).value().doubleValue());
    }

    @Test
    void every_figure_of_jcgm_gum_5() {
        try (RowByRow rows = RowByRow.of("gum5_examples.csv")) {
            rows.elsewhere("G13-1[45]", "GumExamplesTest.jcgm_gum_5_example_13_resistance_thermometer");
            rows.elsewhere("G10-5", "Jcgm106Test.jcgm_gum_5_example_10_specific_risk_with_a_lognormal_prior");
            rows.elsewhere("G15-[56]", "GumExamplesTest.jcgm_gum_5_example_15_breaking_force");
            rows.without("G9-[56]", "a line held to the origin is not offered");
            List<Input> inputs = List.of(
                    Input.of("A_0", "", 11.450, "", new Distribution.Normal(0.05), Origin.CERTIFICATE, "example 14"),
                    Input.of("T", "", 32.9, "", new Distribution.Normal(1.4), Origin.CERTIFICATE, "example 14"));
            Budget decayed = Budget.of("A", "", inputs, x -> x[0] * StrictMath.pow(2, -2.73 / x[1]));
            rows.is("G14-4", decayed.value());
            rows.within(2e-6, "G14-5", decayed.combined()); // by differences, u(T) being 4 % of T
            Input force = GumExamplesTest.mean(
                    "F", Printed.row("gum5_examples.csv", "G15-1").numbers("value"));
            rows.is("G15-3", force.estimate());
            rows.is("G15-4", force.standardUncertainty());
        }
    }

    /** Rules have no row of their own to compare with {@link RowByRow}; their examples have. */
    @Test
    void every_numerical_tolerance_of_jcgm_101() {
        try (RowByRow rows = RowByRow.of("jcgm101_rules.csv")) {
            double[] u = {0.00035, 0.00035, 2, 2, 0.08, 10, 10};
            int[] digits = {2, 1, 1, 2, 1, 2, 1};
            for (int i = 0; i < u.length; i++) {
                rows.is(String.format(Locale.ROOT, "TOL-%d", i + 2), MonteCarlo.tolerance(u[i], digits[i]));
            }
            rows.elsewhere("ADP-M-.*", "Jcgm101Test.clause_794_blocks_are_as_large_as_the_probability_asks");
            rows.elsewhere("SH-[12]", "Jcgm101Test.clause_772_shortest_intervals_of_uniform_numbers_hold_too_little");
            rows.elsewhere("F-2", "Jcgm101Test.clause_94_comparison_loss");
            rows.without("NA-.*", "non-adaptive statistical coverage intervals are not offered");
        }
    }
}
