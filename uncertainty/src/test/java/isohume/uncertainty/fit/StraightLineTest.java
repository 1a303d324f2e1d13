// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.fit;

import static isohume.uncertainty.Printed.assertRelative;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import isohume.uncertainty.Coverage;
import isohume.uncertainty.Printed;
import isohume.uncertainty.RowByRow;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Published lines (straight_line_calibration.csv, gum_annex_h.csv) by their recomputed, unrounded figures. */
class StraightLineTest {
    private static final double DIGITS = 5e-9; // the recomputed figures have ten digits
    private static final double MINIMISED = 1e-7; // those found there by minimising have eight

    private static double check(String id) {
        return Printed.row("straight_line_calibration.csv", id).number("check_value");
    }

    private static double computed(String id) {
        return Printed.row("straight_line_calibration.csv", id).number("value");
    }

    private static double[] column(String dataset, String name) {
        List<Printed.Row> rows = Printed.table("straight_line_data.csv").stream()
                .filter(row -> row.text("dataset").equals(dataset))
                .toList();
        return Printed.column(rows, name);
    }

    private static StraightLine weighted(String dataset) {
        return StraightLine.weighted(column(dataset, "x"), column(dataset, "y"), column(dataset, "u_y"));
    }

    private static StraightLine bothAxes(String dataset) {
        return StraightLine.errorsInBothAxes(
                column(dataset, "x"), column(dataset, "u_x"), column(dataset, "y"), column(dataset, "u_y"));
    }

    private static void assertLine(StraightLine line, String prefix, boolean withCovariance) {
        assertLine(line, prefix, withCovariance, DIGITS);
    }

    private static void assertLine(StraightLine line, String prefix, boolean withCovariance, double digits) {
        assertRelative(check(prefix + "-1"), line.intercept().value(), digits, prefix + " a");
        assertRelative(check(prefix + "-2"), line.slope(), digits, prefix + " b");
        assertRelative(check(prefix + "-3"), line.intercept().standardUncertainty(), digits, prefix + " u(a)");
        assertRelative(check(prefix + "-4"), line.slopeUncertainty(), digits, prefix + " u(b)");
        if (withCovariance) {
            assertRelative(check(prefix + "-5"), line.covariance(), digits, prefix + " cov");
        }
    }

    /** Where the derivative of the profile χ² is zero: mpmath 1.3.0, findroot with 40 digits, on the same data. */
    private static void assertMinimum(StraightLine line, double intercept, double slope, double chiSquared) {
        assertRelative(intercept, line.intercept().value(), 1e-12, "a");
        assertRelative(slope, line.slope(), 1e-12, "b");
        assertRelative(chiSquared, line.chiSquared(), 1e-12, "chi-squared");
    }

    @Test
    void gum_h3_thermometer_calibration() {
        List<Printed.Row> rows = Printed.table("gum_h3_data.csv");
        double[] t =
                rows.stream().mapToDouble(row -> row.number("t_k_degC") - 20).toArray();
        StraightLine line = StraightLine.unweighted(t, Printed.column(rows, "b_k_degC"));
        assertRelative(h3("H3x-01"), line.intercept().value(), 1e-10, "y1");
        assertRelative(h3("H3x-02"), line.slope(), 1e-10, "y2");
        assertRelative(h3("H3x-03"), line.intercept().standardUncertainty(), 1e-10, "s(y1)");
        assertRelative(h3("H3x-04"), line.slopeUncertainty(), 1e-10, "s(y2)");
        assertRelative(h3("H3x-05"), line.correlation(), 1e-10, "r(y1,y2)");
        assertRelative(h3("H3x-06"), line.chiSquared(), 1e-10, "sum of squares");
        assertRelative(h3("H3x-07"), line.at(10).value(), 1e-10, "b(30)");
        assertRelative(h3("H3x-08"), line.at(10).standardUncertainty(), 1e-10, "u(b(30))");
        double factor = Coverage.factor(0.95, line.degreesOfFreedom());
        assertRelative(h3("H3x-10"), factor * line.at(10).standardUncertainty(), 1e-10, "U95");
        for (int i = 0; i < t.length; i++) {
            Printed.Row row = rows.get(i);
            assertRelative(row.number("check_predicted"), line.at(t[i]).value(), 2e-9, row.toString());
        }
    }

    private static double h3(String id) {
        return Printed.row("gum_annex_h.csv", id).number("value");
    }

    @Test
    void iso_28037_equal_weights() {
        StraightLine line = weighted("iso28037_wls1");
        assertLine(line, "ISO1", true);
        assertRelative(check("ISO1-6"), line.chiSquared(), DIGITS, "chi-squared");
        Estimate x = line.whereItIs(10.5, 0.5);
        assertRelative(check("ISO1-7"), x.value(), DIGITS, "x");
        assertRelative(check("ISO1-8"), x.standardUncertainty(), DIGITS, "u(x)");
    }

    @Test
    void iso_28037_unequal_weights() {
        StraightLine line = weighted("iso28037_wls2");
        assertLine(line, "ISO2", true);
        assertRelative(check("ISO2-6"), line.chiSquared(), DIGITS, "chi-squared");
        Estimate x = line.whereItIs(10.5, 1.0);
        assertRelative(check("ISO2-7"), x.value(), DIGITS, "x");
        assertRelative(check("ISO2-8"), x.standardUncertainty(), DIGITS, "u(x)");
    }

    @Test
    void iso_28037_errors_in_both_axes() {
        StraightLine line = bothAxes("iso28037_gdr");
        assertLine(line, "ISO3", true, MINIMISED);
        assertMinimum(line, 0.5788221221495, 2.1596565673993, 2.742676789731);
    }

    @Test
    void a_thermometer_calibration_with_errors_in_both_axes() {
        StraightLine line = bothAxes("mathioulakis_thermometer");
        assertLine(line, "MATH", true, MINIMISED);
        assertMinimum(line, 0.099034242068824, 0.97839641250671, 23.549210404202);
    }

    @Test
    void pearson_s_points_with_york_s_weights() {
        StraightLine line = bothAxes("pearson_york");
        assertLine(line, "YORK", false, MINIMISED);
        assertMinimum(line, 5.4799102240329, -0.4805334074462, 11.866353194061);
        assertRelative(check("YORK-5"), line.chiSquared() / line.degreesOfFreedom(), DIGITS, "chi-squared/(N-2)");
    }

    @Test
    void weights_that_are_only_relative() {
        StraightLine line =
                StraightLine.weightedRelatively(column("rwls", "x"), column("rwls", "y"), column("rwls", "u_y"));
        assertLine(line, "RWLS", true);
    }

    @Test
    void a_drifting_resistance_standard_of_jcgm_gum_6_table_5() {
        List<Printed.Row> rows = Printed.table("drift_resistance_standard.csv");
        double[] t = Printed.column(rows, "t_day");
        double[] y = Printed.column(rows, "y_1e-6");
        StraightLine line = StraightLine.weighted(t, y, Printed.column(rows, "u_y_1e-6"));
        assertRelative(check("DRIFT-4"), line.at(9242).value(), DIGITS, "y(t_C)");
        assertRelative(check("DRIFT-5"), line.at(9242).standardUncertainty(), DIGITS, "u(y(t_C))");
        assertRelative(computed("DRIFT-x6"), line.chiSquared(), DIGITS, "chi-squared");
        StraightLine scattered = StraightLine.unweighted(t, y);
        assertRelative(check("DRIFT-3"), scattered.scatter(), DIGITS, "scatter");
        assertRelative(computed("DRIFT-x8"), scattered.slopeUncertainty(), DIGITS, "u(slope)");
        assertRelative(computed("DRIFT-x9"), scattered.at(9242).standardUncertainty(), DIGITS, "u(y(t_C))");
    }

    @Test
    void what_cannot_be_a_line_is_refused() {
        double[] x = {1, 1, 1};
        assertThrows(IllegalArgumentException.class, () -> StraightLine.unweighted(x, new double[] {1, 2, 3}));
        assertThrows(IllegalArgumentException.class, () -> StraightLine.unweighted(new double[2], new double[2]));
        assertEquals(3, x.length);
    }

    @Test
    void every_figure_of_the_table() {
        try (RowByRow rows = RowByRow.of("straight_line_calibration.csv")) {
            rows.elsewhere("ISO1-.*", "StraightLineTest.iso_28037_equal_weights");
            rows.elsewhere("ISO2-.*", "StraightLineTest.iso_28037_unequal_weights");
            rows.elsewhere("ISO3-.*", "StraightLineTest.iso_28037_errors_in_both_axes");
            rows.elsewhere("MATH-.*", "StraightLineTest.a_thermometer_calibration_with_errors_in_both_axes");
            rows.elsewhere("YORK-.*", "StraightLineTest.pearson_s_points_with_york_s_weights");
            rows.elsewhere("RWLS-.*", "StraightLineTest.weights_that_are_only_relative");
            rows.elsewhere("DRIFT-(3|4|5|x6|x8|x9)", "StraightLineTest.a_drifting_resistance_standard");
            List<Printed.Row> data = Printed.table("drift_resistance_standard.csv");
            StraightLine line = StraightLine.weighted(
                    Printed.column(data, "t_day"), Printed.column(data, "y_1e-6"), Printed.column(data, "u_y_1e-6"));
            rows.within(DIGITS, "DRIFT-x1", line.intercept().value());
            rows.within(DIGITS, "DRIFT-x2", line.slope());
            rows.within(DIGITS, "DRIFT-x3", line.intercept().standardUncertainty());
            rows.within(DIGITS, "DRIFT-x4", line.slopeUncertainty());
            rows.within(DIGITS, "DRIFT-x5", line.covariance());
            rows.within(DIGITS, "DRIFT-x7", line.slope() * 365.25);
            double factor = Coverage.factor(0.95, line.degreesOfFreedom());
            rows.within(DIGITS, "DRIFT-6", factor * line.at(9242).standardUncertainty());
        }
    }
}
