// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import static isohume.uncertainty.Printed.assertDigits;
import static isohume.uncertainty.Printed.assertRelative;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.StatisticalSummary;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.junit.jupiter.api.Test;

/** Worked examples of JCGM 100:2008 (gum_annex_h.csv, gum_misc.csv), with recomputed figures where print is rounded. */
class GumExamplesTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;
    private static final double NM_PER_MM = 1e6;

    private static Input line(String symbol, double estimate, Distribution distribution, double freedom) {
        return new Input(symbol, symbol, estimate, "", distribution, freedom, Origin.CERTIFICATE, "JCGM 100");
    }

    private static double check(String id) {
        return Printed.row("gum_annex_h.csv", id).number("check_value");
    }

    /** H.1 in its smallest parts, in nm and °C: l = l_S + d + d1 + d2 - l_S(δα·(θ + Δ) + α_S·δθ). */
    static Budget gaugeBlock() {
        List<Input> inputs = List.of(
                line("l_S", 50.000623 * NM_PER_MM, new Distribution.Expanded(75, 3), 18),
                line("d", 215, new Distribution.Normal(13 / Math.sqrt(5)), 24),
                line("d1", 0, new Distribution.Expanded(10, Coverage.factor(0.95, 5)), 5),
                line("d2", 0, new Distribution.Expanded(20, 3), Input.degreesOfFreedomFromReliability(0.25)),
                line("alpha_S", 11.5e-6, new Distribution.Rectangular(2e-6), INFINITE),
                line("theta", -0.1, new Distribution.Normal(0.2), INFINITE),
                line("Delta", 0, new Distribution.UShaped(0.5), INFINITE),
                line("delta_alpha", 0, new Distribution.Rectangular(1e-6), Input.degreesOfFreedomFromReliability(0.1)),
                line("delta_theta", 0, new Distribution.Rectangular(0.05), Input.degreesOfFreedomFromReliability(0.5)));
        return Budget.of("l", "nm", inputs, GumExamplesTest::length, Correlations.none(), 0.99);
    }

    private static double length(double[] x) {
        return x[0] + x[1] + x[2] + x[3] - x[0] * (x[7] * (x[5] + x[6]) + x[4] * x[8]);
    }

    @Test
    void h1_gauge_block_calibration() {
        Budget budget = gaugeBlock();
        String[] rows = {"H1-23", "H1-24", "H1-26", "H1-27", "H1-38", "H1-39", "H1-39", "H1-36", "H1-37"};
        for (int i = 0; i < rows.length; i++) {
            double found = Math.abs(budget.contributions().get(i).contribution());
            assertEquals(check(rows[i]), found, 1e-8, rows[i]);
        }
        assertEquals(check("H1-42"), budget.value() / NM_PER_MM, 1e-13, "length");
        assertRelative(check("H1-41"), budget.combined(), 1e-9, "u_c");
        assertRelative(check("H1-45"), budget.effectiveDegreesOfFreedom(), 1e-8, "effective degrees of freedom");
        assertRelative(check("H1-47"), budget.coverageFactor(), 1e-9, "t_99(16)");
        assertRelative(check("H1-48"), budget.expanded(), 1e-9, "U_99");
    }

    @Test
    void h2_simultaneous_resistance_and_reactance_with_correlated_inputs() {
        assertComponent("H2b-01", "H2b-04", x -> x[0] / x[1] * StrictMath.cos(x[2]));
        assertComponent("H2b-02", "H2b-05", x -> x[0] / x[1] * StrictMath.sin(x[2]));
        assertComponent("H2b-03", "H2b-06", x -> x[0] / x[1]);
    }

    @Test
    void h2_with_its_correlations_left_out_is_the_table_that_warns_of_it() {
        Correlations none = Correlations.none();
        assertRelative(
                check("H2d-01"),
                impedance(x -> x[0] / x[1] * StrictMath.cos(x[2]), none).combined(),
                1e-8,
                "R");
        assertRelative(
                check("H2d-02"),
                impedance(x -> x[0] / x[1] * StrictMath.sin(x[2]), none).combined(),
                1e-8,
                "X");
        assertRelative(check("H2d-03"), impedance(x -> x[0] / x[1], none).combined(), 1e-8, "Z");
    }

    private static void assertComponent(String valueRow, String uncertaintyRow, Model model) {
        Correlations correlations = impedanceCorrelations();
        Budget budget = impedance(model, correlations);
        assertRelative(check(valueRow), budget.value(), 1e-9, valueRow);
        assertRelative(check(uncertaintyRow), budget.combined(), 1e-8, uncertaintyRow);
    }

    static double[][] impedanceReadings() {
        List<Printed.Row> rows = Printed.table("gum_h2_data.csv");
        return new double[][] {volts(rows), amperes(rows), Printed.column(rows, "phi_radian")};
    }

    static Correlations impedanceCorrelations() {
        double[][] columns = impedanceReadings();
        PearsonsCorrelation pearson = new PearsonsCorrelation();
        return Correlations.between("V", "I", pearson.correlation(columns[0], columns[1]))
                .and("V", "phi", pearson.correlation(columns[0], columns[2]))
                .and("I", "phi", pearson.correlation(columns[1], columns[2]));
    }

    static Budget impedance(Model model, Correlations correlations) {
        double[][] columns = impedanceReadings();
        List<Input> inputs = List.of(mean("V", columns[0]), mean("I", columns[1]), mean("phi", columns[2]));
        return Budget.of("impedance", "ohm", inputs, model, correlations, Coverage.TWO_SIGMA);
    }

    private static double[] volts(List<Printed.Row> rows) {
        return Printed.column(rows, "V_volt");
    }

    private static double[] amperes(List<Printed.Row> rows) {
        return rows.stream()
                .mapToDouble(row -> row.number("I_milliampere") / 1000)
                .toArray();
    }

    static Input mean(String symbol, double[] readings) {
        StreamingStatistics statistics = new StreamingStatistics();
        for (double reading : readings) {
            statistics.addValue(reading);
        }
        StatisticalSummary summary = statistics.getSummary();
        Distribution distribution = new Distribution.MeanOfReadings(summary.getStandardDeviation(), readings.length);
        return Input.of(symbol, symbol, summary.getMean(), "", distribution, Origin.MEASURED, "JCGM 100 table H.2");
    }

    @Test
    void h6_rockwell_hardness() {
        Budget budget = hardness();
        assertDigits("64.0", budget.value(), 0.5, "h");
        assertDigits("0.55", budget.combined(), 0.5, "u_c(h), JCGM 100 H.6.5");
    }

    static Budget hardness() {
        List<Input> inputs = List.of(
                line("d", 36.0, new Distribution.MeanOfReadings(0.45, 5), 4),
                line("resolution", 0, new Distribution.Rectangular(0.05), INFINITE),
                line("z_S", 0, new Distribution.MeanOfReadings(0.10, 6), 5),
                line("z", 0, new Distribution.MeanOfReadings(0.11, 6), 5),
                line("variation", 0, new Distribution.Triangular(0.015 * 36.0 / 2), INFINITE),
                line("Delta_S", 0, new Distribution.Normal(0.5), INFINITE));
        return Budget.of("h", "HRC", inputs, x -> 100 - x[0] - x[1] - x[2] - x[3] - x[4] - x[5]);
    }

    @Test
    void g41_welch_and_satterthwaite() {
        Budget budget = product();
        assertEquals(1.029465881e-2, budget.combined(), 1e-11, "G41-07, recomputed");
        assertEquals(18.99874231, budget.effectiveDegreesOfFreedom(), 1e-7, "G41-08, recomputed; printed 19.0");
        assertDigits("2.2", 100 * budget.expanded(), 0.5, "G41-10, percent");
    }

    static Budget product() {
        List<Input> inputs = List.of(
                line("x1", 1, new Distribution.Normal(0.0025), 9),
                line("x2", 1, new Distribution.Normal(0.0057), 4),
                line("x3", 1, new Distribution.Normal(0.0082), 14));
        return Budget.of("y", "1", inputs, x -> x[0] * x[1] * x[2], Correlations.none(), 0.95);
    }

    /** The temperature is only implied: R_S·ratio = R_0(1 + A·t + B·t²), solved here by the quadratic formula. */
    @Test
    void jcgm_gum_5_example_13_resistance_thermometer() {
        List<Input> inputs = List.of(
                line("R_0", 99.99610, new Distribution.Normal(0.00050), INFINITE),
                line("A", 0.0039096, new Distribution.Normal(0.0000027), INFINITE),
                line("B", -6.0e-7, new Distribution.Normal(1.1e-7), INFINITE),
                line("R_S", 99.99947, new Distribution.Normal(0.00010), INFINITE),
                line("ratio", 1.0780057, new Distribution.Normal(0.0000050), INFINITE));
        Correlations correlations =
                Correlations.between("R_0", "A", -0.155).and("R_0", "B", 0.092).and("A", "B", -0.959);
        Model temperature = x -> {
            double excess = x[3] * x[4] / x[0] - 1;
            return 2 * excess / (x[1] + Math.sqrt(x[1] * x[1] + 4 * x[2] * excess));
        };
        Budget budget = Budget.of("t", "degC", inputs, temperature, correlations, 0.95);
        assertRelative(gum5("G13-14"), budget.value(), 1e-8, "t");
        assertRelative(gum5("G13-15"), budget.combined(), 1e-6, "u(t)");
    }

    @Test
    void jcgm_gum_5_example_15_breaking_force() {
        List<Input> inputs = List.of(
                line("mean", 10005.66667, new Distribution.Normal(0.714920353), 5),
                line("a", 0, new Distribution.Rectangular(6.8), INFINITE),
                line("b", 0, new Distribution.Rectangular(8.2), INFINITE),
                line("c", 0, new Distribution.Rectangular(8.7), INFINITE),
                line("d", 0, new Distribution.Rectangular(10.2), INFINITE));
        Budget budget = Budget.of("F", "kN", inputs, x -> x[0] + x[1] + x[2] + x[3] + x[4], Correlations.none(), 0.95);
        assertRelative(gum5("G15-5"), budget.combined(), 1e-8, "u_c");
        assertRelative(gum5("G15-6"), budget.expanded(), 2e-5, "U; the guide takes k as 1.96");
    }

    private static double gum5(String id) {
        return Printed.row("gum5_examples.csv", id).number("check_value");
    }

    @Test
    void table_g2_of_student_t() {
        for (Printed.Row row : Printed.table("gum_table_g2.csv")) {
            double freedom = "inf".equals(row.text("nu")) ? INFINITE : row.number("nu");
            assertRelative(
                    row.number("check_value"), Coverage.factor(probability(row), freedom), 2e-11, row.toString());
        }
    }

    /** Where the table says 68.27, 95.45 and 99.73 %, it means one, two and three standard deviations. */
    private static double probability(Printed.Row row) {
        return switch (row.text("p_percent")) {
            case "68.27" -> 0.6826894921370859;
            case "95.45" -> Coverage.TWO_SIGMA;
            case "99.73" -> 0.9973002039367398;
            default -> row.number("p_percent") / 100;
        };
    }
}
