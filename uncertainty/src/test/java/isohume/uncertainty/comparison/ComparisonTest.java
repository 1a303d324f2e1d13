// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.comparison;

import static isohume.uncertainty.Printed.assertRelative;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import isohume.uncertainty.Coverage;
import isohume.uncertainty.Distribution;
import isohume.uncertainty.Printed;
import isohume.uncertainty.RowByRow;
import isohume.uncertainty.series.Series;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
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
        for (String dataset : List.of("paule_mandel_ex2", "cd_vaporization", "pb_wine_included", "copper_avg")) {
            String data = switch (dataset) {
                case "pb_wine_included" -> "pb_in_wine";
                case "copper_avg" -> "copper_four_estimates";
                default -> dataset;
            };
            List<Printed.Row> rows = results(data, true);
            double[] x = Printed.column(rows, "x");
            double[] u = Printed.column(rows, "u");
            assertPlain(dataset, Consensus.weightedMean(x, u));
            assertConsensus(dataset + "-MP", Consensus.mandelPaule(x, u));
            assertConsensus(dataset + "-RMA_PM", Consensus.mandelPaule(x, u)); // another library's name for the same
            assertConsensus(dataset + "-RMA_DL", Consensus.derSimonianLaird(x, u));
        }
    }

    private static void assertConsensus(String id, Consensus found) {
        assertRelative(value("CM-" + id + "-0"), found.value(), 1e-9, id);
        assertRelative(value("CM-" + id + "-1"), found.standardUncertainty(), 1e-8, id);
        assertRelative(value("CM-" + id + "-2"), found.betweenVariance(), 1e-7, id);
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
        Consensus moments = Consensus.derSimonianLaird(Printed.column(rows, "x"), Printed.column(rows, "u"));
        assertRelative(check("CLASP-De-mean"), moments.value(), 1e-7, "mean");
        assertRelative(check("CLASP-De-se"), moments.standardUncertainty(), 1e-7, "se");
        assertRelative(check("CLASP-De-tau"), Math.sqrt(moments.betweenVariance()), 1e-7, "tau");
    }

    @Test
    void every_figure_of_the_table() {
        try (RowByRow rows = RowByRow.of("interlab.csv")) {
            rows.elsewhere("PB-(En|ze)-.*", "ComparisonTest.scores_of_ccqm_k30_participants");
            rows.elsewhere("CM-.*-(MP|RMA_PM|RMA_DL)-.*", "ComparisonTest.consensus_values_agree_with_r");
            rows.elsewhere("CM-.*(weighted|chi-sq|pf Q|Birge).*", "ComparisonTest.assertPlain");
            rows.elsewhere("CLASP-(Pa|De)-.*", "ComparisonTest.the_example_of_dersimonian_and_kacker");
            rows.elsewhere("BA-([134]|x.*)", "ComparisonTest.barium_homogeneity_of_jcgm_gum_6");
            rows.without(".*(REML|CLASP-REL|CLASP-MLL|CLASP-He).*", "REML, ML and Hedges' estimates are not offered");
            rows.without("BA-2", "a Kruskal-Wallis test is not offered; print and recomputation differ besides");
            rows.without("CU-2", "its formula is for dependent estimates; the plain one is among CM-copper_avg");
            scores(rows);
            List<Printed.Row> copper = results("copper_four_estimates", true);
            Consensus mean = Consensus.weightedMean(Printed.column(copper, "x"), Printed.column(copper, "u"));
            rows.is("CU-1", mean.value());
            OneWayVariance barium = barium();
            rows.within(1e-7, "BA-5", barium.grandMean());
            rows.within(1e-7, "BA-6", Math.sqrt(barium.betweenMeanSquare() / (18 * 3)));
        }
    }

    private static void scores(RowByRow rows) {
        double[] gears = {1.006, 0.996, 0.998, 1.000, 0.992};
        for (int i = 0; i < gears.length; i++) {
            double zeta = Agreement.zeta(gears[i], 0.00434613, 1, 0.006278908);
            assertEquals(Printed.row("interlab.csv", "ZG-" + (i + 1)).number("value"), zeta, 1e-3, "as printed");
            rows.within(4e-6, "ZG-" + (i + 1), zeta);
        }
        rows.is("EN-1", Agreement.en(50.3, 0.6, 50, 0.4));
        rows.is("EN-2", Agreement.en(50.9, 0.6, 50, 0.4));
        rows.is("EN-3", Agreement.en(-10.12, 0.08, -10, 0.06));
        rows.is("EN-4", Agreement.en(20.05, 0.05, 20, 0));
    }

    private static double check(String id) {
        return Printed.row("interlab.csv", id).number("check_value");
    }

    @Test
    void barium_homogeneity_of_jcgm_gum_6() {
        OneWayVariance found = barium();
        assertRelative(value("BA-xeen"), found.betweenMeanSquare(), 1e-11, "between");
        assertRelative(value("BA-xhin"), found.withinMeanSquare(), 1e-11, "within");
        assertRelative(value("BA-xF"), found.f(), 1e-11, "F");
        assertRelative(check("BA-1"), found.probabilityIfEqual(), 1e-7, "p");
        assertRelative(check("BA-3"), found.betweenDeviation(), 1e-7, "tau");
        assertRelative(check("BA-4"), found.withinDeviation(), 1e-7, "sigma");
    }

    private static OneWayVariance barium() {
        return OneWayVariance.of(Printed.table("barium_homogeneity.csv").stream()
                .map(row -> new double[] {row.number("r1"), row.number("r2"), row.number("r3")})
                .toList());
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

    /** Two samples (two_sample.csv): what of them is analysis of variance, a t factor or a limit's uncertainty. */
    @Test
    void every_figure_of_two_samples_that_has_a_method_here() {
        try (RowByRow rows = RowByRow.of("two_sample.csv")) {
            double s = 0.02278881 / Math.sqrt(195);
            for (String percent : new String[] {"50", "90", "95", "99", "99.9"}) {
                double factor = Coverage.factor(Double.parseDouble(percent) / 100, 194);
                rows.within(1e-7, "HF-t" + percent, factor);
                rows.within(1e-7, "HF-w" + percent, factor * s);
            }
            rows.within(1e-8, "HF-T", (9.26146 - 5) / s);
            repeatability(rows);
            differences(rows);
            rows.without("AUTO-.*|SL-(0[1-5]|1.)", "t tests of two means are not offered: E_n is, with uncertainties");
            rows.without("GEAR-.*", "confidence limits of a standard deviation are not offered");
            rows.without("JAH-.*|ASM-.*", "F tests of two variances are not offered, only that of group means");
        }
    }

    private static void repeatability(RowByRow rows) {
        OneWayVariance found = OneWayVariance.of(List.of(groups("RR-data")));
        rows.is("RR-pooled-s-(repeatability)", found.withinDeviation());
        rows.is("RR-between-series-s", found.betweenDeviation());
        rows.is("RR-intermediate-precision-s", Math.hypot(found.withinDeviation(), found.betweenDeviation()));
        rows.is("RR-F", found.f());
        rows.within(1e-8, "RR-p", found.probabilityIfEqual());
        rows.is("RR-pooled-degrees-of-freedo", found.withinFreedom());
    }

    /** Paired differences are one series of readings, with a mean and its uncertainty. */
    private static void differences(RowByRow rows) {
        Series sleep = Series.evenly(1, differences("SL-d"));
        double error = sleep.standardDeviation() / Math.sqrt(sleep.count());
        double reach = Coverage.factor(0.95, 9) * error;
        rows.is("SL-06", sleep.mean() / error);
        rows.is("SL-07", sleep.count() - 1);
        rows.near(1e-11, "SL-08", 2 * new TDistribution(9).cumulativeProbability(sleep.mean() / error));
        rows.is("SL-09", sleep.mean() - reach);
        rows.is("SL-10", sleep.mean() + reach);
        double[] steps = differences("HY-data"); // up less down
        Series hysteresis = Series.evenly(1, steps);
        double largest = Arrays.stream(steps).map(Math::abs).max().orElseThrow();
        rows.is("HY-max", largest);
        rows.is("HY-u", new Distribution.Rectangular(largest / 2).standardUncertainty());
        rows.is("HY-pt", -hysteresis.mean() / (hysteresis.standardDeviation() / Math.sqrt(hysteresis.count())));
    }

    private static double[] differences(String id) {
        double[][] pair = groups(id);
        double[] differences = new double[pair[0].length];
        Arrays.setAll(differences, i -> pair[0][i] - pair[1][i]);
        return differences;
    }

    private static double[][] groups(String id) {
        String value = Printed.row("two_sample.csv", id).text("value");
        return Arrays.stream(value.split("\\|", -1))
                .map(one -> Arrays.stream(one.split(";", -1))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toArray(double[][]::new);
    }
}
