// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.series;

import static isohume.uncertainty.Printed.assertDigits;
import static isohume.uncertainty.Printed.assertRelative;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import isohume.uncertainty.Printed;
import java.util.Arrays;
import java.util.List;
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
        double[] values = new double[1000];
        long n = 1_234_567_890L;
        for (int i = 0; i < values.length; i++) {
            values[i] = n / 2147483647.0;
            n = 16807 * n % 2147483647L;
        }
        for (int m : new int[] {1, 10, 100}) {
            assertDigits(allan("L-adev-" + m), AllanDeviation.adjacent(values, m), 0.6, "adjacent " + m);
            assertDigits(allan("L-oadev-" + m), AllanDeviation.overlapping(values, m), 0.6, "overlapping " + m);
        }
        assertEquals(9, AllanDeviation.doubling(1, values).size());
    }

    private static String allan(String id) {
        return Printed.row("allan.csv", id).text("value");
    }
}
