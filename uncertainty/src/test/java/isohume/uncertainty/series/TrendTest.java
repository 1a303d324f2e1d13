// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.series;

import static isohume.uncertainty.Printed.assertDigits;
import static isohume.uncertainty.Printed.assertRelative;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import isohume.uncertainty.Printed;
import isohume.uncertainty.RowByRow;
import isohume.uncertainty.fit.StraightLine;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;

/** Trend tests and Allan deviations against print and R (trend_tests.csv, mann_kendall_exact.csv, allan.csv). */
class TrendTest {
    private static Printed.Row trend(String id) {
        return Printed.row("trend_tests.csv", id);
    }

    private static double[] upwards(int n) {
        double[] times = new double[n];
        Arrays.setAll(times, i -> i);
        return times;
    }

    private static MannKendall test(double... values) {
        return MannKendall.of(upwards(values.length), values);
    }

    @Test
    void the_example_worked_by_hand() {
        MannKendall found = test(trend("HC-1").numbers("value"));
        assertEquals(54, found.s());
        assertRelative(trend("HC-3").number("check_value"), found.variance(), 1e-9, "variance with a tie");
        assertRelative(trend("HC-4").number("check_value"), found.z(), 1e-7, "Z");
        assertRelative(trend("HC-5").number("check_value"), found.probabilityIfSteady() / 2, 1e-7, "one-sided p");
        assertRelative(trend("HC-6").number("value"), found.senSlopePerSecond(), 1e-9, "Sen's slope");
    }

    @Test
    void the_series_with_missing_values_as_tested_against_r() {
        List<Printed.Row> rows = Printed.table("trend_series_360.csv").stream()
                .filter(row -> row.has("value"))
                .toList();
        MannKendall found = MannKendall.of(Printed.column(rows, "i"), Printed.column(rows, "value"));
        assertEquals(-1959, found.s());
        assertRelative(trend("PY-3").number("value"), found.variance(), 1e-14, "variance");
        assertRelative(trend("PY-4").number("value"), found.z(), 1e-13, "Z");
        assertRelative(trend("PY-5").number("value"), found.probabilityIfSteady(), 1e-12, "p");
    }

    @Test
    void exact_probabilities_agree_with_enumeration() {
        for (Printed.Row row : Printed.table("mann_kendall_exact.csv")) {
            double found = MannKendall.upperTail((int) row.number("n"), (long) row.number("S"));
            assertRelative(row.number("upper_tail_p"), found, 1e-10, row.toString());
        }
        assertEquals(2 * 0.0416666666667, test(1, 2, 3, 4).probabilityIfSteady(), 1e-12, "n = 4, S = 6");
        assertEquals(1, test(2, 2, 2, 2).probabilityIfSteady());
    }

    @Test
    void allan_deviations_of_nist_sp_1065_small_set() {
        double[] frequencies = Printed.table("allan_nbs14_small.csv").stream()
                .filter(row -> row.has("frequency"))
                .mapToDouble(row -> row.number("frequency"))
                .toArray();
        for (int m : new int[] {1, 2}) {
            assertDigits(allan("S-adev-" + m), AllanDeviation.adjacent(frequencies, m), 0.5, "adjacent " + m);
            assertDigits(allan("S-oadev-" + m), AllanDeviation.overlapping(frequencies, m), 0.5, "overlapping " + m);
        }
        assertThrows(IllegalArgumentException.class, () -> AllanDeviation.overlapping(frequencies, 5));
    }

    @Test
    void allan_deviations_of_nist_sp_1065_thousand_points() {
        double[] values = thousand();
        for (int next = 1; next <= 3; next++) {
            assertEquals(Printed.row("allan.csv", "L-n" + next).number("value"), values[next] * 2147483647.0, 1e-6);
        }
        for (int m : new int[] {1, 10, 100}) {
            assertDigits(allan("L-adev-" + m), AllanDeviation.adjacent(values, m), 0.6, "adjacent " + m);
            assertDigits(allan("L-oadev-" + m), AllanDeviation.overlapping(values, m), 0.6, "overlapping " + m);
        }
        assertEquals(9, AllanDeviation.doubling(1, values).size());
    }

    private static double[] thousand() {
        double[] values = new double[1000];
        long n = 1_234_567_890L;
        for (int i = 0; i < values.length; i++) {
            values[i] = n / 2147483647.0;
            n = 16807 * n % 2147483647L;
        }
        return values;
    }

    private static String allan(String id) {
        return Printed.row("allan.csv", id).text("value");
    }

    @Test
    void every_figure_of_the_trend_tests() {
        try (RowByRow rows = RowByRow.of("trend_tests.csv")) {
            rows.elsewhere("HC-[3-6]", "TrendTest.the_example_worked_by_hand");
            rows.elsewhere("PY-[345]", "TrendTest.the_series_with_missing_values_as_tested_against_r");
            rows.is("HC-2", (double) test(trend("HC-1").numbers("value")).s());
            straightLine(rows, trend("HC-1").numbers("value"));
            MannKendall shampoo = test(trend("SH-1").numbers("value"));
            rows.is("SH-2", (double) shampoo.s());
            rows.is("SH-3", shampoo.variance());
            rows.is("SH-4", shampoo.z());
            rows.within(1e-8, "SH-5", shampoo.probabilityIfSteady());
            rows.is("SH-6", shampoo.senSlopePerSecond());
            double[] present = present();
            MannKendall compressed = test(present);
            rows.is("PY-1", present.length);
            rows.is("PY-2", (double) compressed.s());
            rows.is("PY-6", 2.0 * (double) compressed.s() / present.length / (present.length - 1));
            rows.is("PY-lin", (double) test(upwards(360)).s());
            List<Printed.Row> given = Printed.table("trend_series_360.csv").stream()
                    .filter(row -> row.has("value"))
                    .toList();
            rows.is("PY-7", MannKendall.of(Printed.column(given, "i"), present).senSlopePerSecond());
            rows.without("HC-7", "Kendall's tau-b is not offered; S, of which it is made, is compared");
            rows.without("PY-([89]|1[0-3])", "variances of S for autocorrelated values are not offered: Drift is");
        }
    }

    private static double[] present() {
        return Printed.table("trend_series_360.csv").stream()
                .filter(row -> row.has("value"))
                .mapToDouble(row -> row.number("value"))
                .toArray();
    }

    /** Least squares with its textbook errors, which a {@link Drift} has if it takes residuals as independent. */
    private static void straightLine(RowByRow rows, double[] values) {
        StraightLine line = StraightLine.unweighted(upwards(values.length), values);
        double t = line.slope() / line.slopeUncertainty();
        double p = 2 * new TDistribution(line.degreesOfFreedom()).cumulativeProbability(-t);
        rows.is("HC-8", line.slope(), line.slopeUncertainty(), t, p);
    }

    @Test
    void every_figure_of_the_allan_deviations() {
        try (RowByRow rows = RowByRow.of("allan.csv")) {
            rows.elsewhere("S-o?adev-.*", "TrendTest.allan_deviations_of_nist_sp_1065_small_set");
            rows.elsewhere("L-(o?adev-.*|n[123])", "TrendTest.allan_deviations_of_nist_sp_1065_thousand_points");
            rows.without(".-(mdev|totdev|hdev|ohdev|tdev)-.*", "other deviations than Allan's are not offered");
            rows.without("Lx-(max|min|median).*", "extremes and medians are of the data, not of a method");
            double[] small = Printed.table("allan_nbs14_small.csv").stream()
                    .filter(row -> row.has("frequency"))
                    .mapToDouble(row -> row.number("frequency"))
                    .toArray();
            for (int m : new int[] {1, 2}) {
                rows.within(1e-7, "S-sd-" + m, deviationOfMeans(small, m));
            }
            double[] values = thousand();
            for (int m : new int[] {1, 10, 100}) {
                rows.within(1e-7, "L-sd-" + m, deviationOfMeans(values, m));
            }
            StraightLine line = StraightLine.unweighted(upwards(1000), values);
            rows.is("Lx-meanmean", Series.evenly(1, values).mean());
            rows.within(2e-9, "Lx-linearsample", line.slope());
            rows.is("Lx-lineart=1)", line.at(-1).value());
        }
    }

    private static double deviationOfMeans(double[] values, int m) {
        double[] means = new double[values.length / m];
        Arrays.setAll(means, i -> Arrays.stream(values, i * m, (i + 1) * m).sum() / m);
        return Series.evenly(1, means).standardDeviation();
    }
}
