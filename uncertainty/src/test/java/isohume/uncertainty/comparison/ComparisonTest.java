// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.comparison;

import static isohume.uncertainty.Printed.assertRelative;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import isohume.uncertainty.Printed;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Scores and consensus values computed by numpy and R, and those printed by their authors (interlab.csv). */
class ComparisonTest {
    private static double value(String id) {
        return Printed.row("interlab.csv", id).number("value");
    }

    private static List<Printed.Row> results(String dataset, boolean onlyIncluded) {
        return Printed.table("interlab_data.csv").stream()
                .filter(row -> row.text("dataset").equals(dataset))
                .filter(row -> !onlyIncluded || row.text("included").equals("TRUE"))
                .toList();
    }

    @Test
    void scores_of_ccqm_k30_participants() {
        for (Printed.Row row : results("pb_in_wine", false)) {
            String label = row.text("label");
            double en = Agreement.en(row.number("x"), row.number("U"), 2.99, 0.06);
            double zeta = Agreement.zeta(row.number("x"), row.number("u"), 2.99, 0.03);
            assertRelative(value("PB-En-" + label), en, 1e-9, label);
            assertRelative(value("PB-ze-" + label), zeta, 1e-8, label);
        }
        assertThrows(IllegalArgumentException.class, () -> Agreement.en(1, 0, 1, 0));
    }

    @Test
    void consensus_values_agree_with_r() {
        for (String dataset : List.of("cd_vaporization", "pb_wine_included", "copper_avg")) {
            String data = switch (dataset) {
                case "pb_wine_included" -> "pb_in_wine";
                case "copper_avg" -> "copper_four_estimates";
                default -> dataset;
            };
            List<Printed.Row> rows = results(data, true);
            double[] x = Printed.column(rows, "x");
            double[] u = Printed.column(rows, "u");
            assertPlain(dataset, Consensus.weightedMean(x, u));
            Consensus mandelPaule = Consensus.mandelPaule(x, u);
            assertRelative(value("CM-" + dataset + "-MP-0"), mandelPaule.value(), 1e-9, dataset);
            assertRelative(value("CM-" + dataset + "-MP-1"), mandelPaule.standardUncertainty(), 1e-8, dataset);
            assertRelative(value("CM-" + dataset + "-MP-2"), mandelPaule.betweenVariance(), 1e-7, dataset);
        }
    }

    private static void assertPlain(String dataset, Consensus mean) {
        String id = "CM-" + dataset;
        assertRelative(value(id + "-weightedean"), mean.value(), 1e-11, dataset);
        assertRelative(value(id + "-u(weightedan)"), mean.standardUncertainty(), 1e-11, dataset);
        assertRelative(value(id + "-chi-squaredd Q"), mean.chiSquared(), 1e-11, dataset);
        assertRelative(value(id + "-Birgetio"), mean.birgeRatio(), 1e-10, dataset);
        assertRelative(value(id + "-Birge-scaledB))"), mean.birgeUncertainty(), 1e-10, dataset);
        assertEquals(value(id + "-pf Q"), mean.probabilityIfConsistent(), 1e-11, dataset);
    }

    @Test
    void the_example_of_dersimonian_and_kacker() {
        List<Printed.Row> rows = results("clasp_logOR", false);
        Consensus found = Consensus.mandelPaule(Printed.column(rows, "x"), Printed.column(rows, "u"));
        assertRelative(check("CLASP-Pa-mean"), found.value(), 1e-7, "mean");
        assertRelative(check("CLASP-Pa-se"), found.standardUncertainty(), 1e-7, "se");
        assertRelative(check("CLASP-Pa-tau"), Math.sqrt(found.betweenVariance()), 1e-7, "tau");
    }

    private static double check(String id) {
        return Printed.row("interlab.csv", id).number("check_value");
    }

    @Test
    void barium_homogeneity_of_jcgm_gum_6() {
        List<double[]> groups = Printed.table("barium_homogeneity.csv").stream()
                .map(row -> new double[] {row.number("r1"), row.number("r2"), row.number("r3")})
                .toList();
        OneWayVariance found = OneWayVariance.of(groups);
        assertRelative(value("BA-xeen"), found.betweenMeanSquare(), 1e-11, "between");
        assertRelative(value("BA-xhin"), found.withinMeanSquare(), 1e-11, "within");
        assertRelative(value("BA-xF"), found.f(), 1e-11, "F");
        assertRelative(check("BA-1"), found.probabilityIfEqual(), 1e-7, "p");
        assertRelative(check("BA-3"), found.betweenDeviation(), 1e-7, "tau");
        assertRelative(check("BA-4"), found.withinDeviation(), 1e-7, "sigma");
    }

    /** Table H.9 gives daily means and standard deviations only; five readings a day are made up to have just those. */
    @Test
    void gum_h5_voltage_standard() {
        List<double[]> days = Printed.table("gum_h5_data.csv").stream()
                .map(row -> fiveReadings((row.number("daily_mean_V") - 10) * 1e6, row.number("s_within_microvolt")))
                .toList();
        OneWayVariance found = OneWayVariance.of(days);
        assertRelative(h5("H5-05"), Math.sqrt(found.betweenMeanSquare()), 1e-8, "s_a");
        assertRelative(h5("H5-07"), found.withinDeviation(), 1e-8, "s_b");
        assertRelative(h5("H5-09"), found.f(), 1e-8, "F; printed 2.25 from rounded figures");
        assertRelative(h5("H5-15"), found.betweenDeviation(), 1e-8, "s_B");
        assertEquals(0.03739682514, found.probabilityIfEqual(), 1e-9, "H5-12");
    }

    private static double h5(String id) {
        return Printed.row("gum_annex_h.csv", id).number("check_value");
    }

    private static double[] fiveReadings(double mean, double s) {
        return new double[] {mean - s, mean - s, mean, mean + s, mean + s}; // squares sum to 4 s²
    }
}
