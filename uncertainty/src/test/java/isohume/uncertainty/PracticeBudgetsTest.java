// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import static isohume.uncertainty.Printed.assertDigits;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Thirteen worked budgets of the trade, computed independently (practice_budgets.csv): relative humidity by dew point
 * and temperature, also with correlated references, by a probe, temperature, and dew point. The sensitivities are taken
 * as printed, so a figure may differ by half its own last digit and by what half a digit of each sensitivity makes of it.
 */
class PracticeBudgetsTest {
    private static final String SHARED = "a_RH_dewpoint_corr";

    @TestFactory
    Stream<DynamicTest> budgets_agree_in_every_contribution_and_in_the_expanded_uncertainty() {
        Map<String, List<Printed.Row>> budgets = new LinkedHashMap<>();
        for (Printed.Row row : Printed.table("practice_budgets.csv")) {
            budgets.computeIfAbsent(row.text("budget") + " at " + row.text("point"), key -> new ArrayList<>())
                    .add(row);
        }
        assertEquals(13, budgets.size());
        return budgets.entrySet().stream().map(e -> dynamicTest(e.getKey(), () -> compare(e.getValue())));
    }

    private static void compare(List<Printed.Row> rows) {
        List<Printed.Row> lines = only(rows, "input");
        double[] sensitivities = Printed.column(lines, "sens_coeff");
        List<Input> inputs = lines.stream().map(PracticeBudgetsTest::input).toList();
        Correlations correlations = rows.getFirst().text("budget").equals(SHARED)
                ? Correlations.between("d_cal", "t_cal", 0.5)
                : Correlations.none();
        Budget budget = Budget.of("error", "%RH", inputs, x -> dot(sensitivities, x), correlations, Coverage.TWO_SIGMA);
        double inherited = 0; // by the variance, from the last digits of the sensitivities
        for (int i = 0; i < lines.size(); i++) {
            Contribution found = budget.contributions().get(i);
            double slack = halfDigit(lines.get(i).text("sens_coeff")) * found.standardUncertainty();
            compare(lines.get(i), found, slack);
            inherited += Math.abs(found.contribution()) * slack / budget.combined();
        }
        compare(only(rows, "combined").getFirst(), only(rows, "expanded").getFirst(), budget, inherited);
    }

    private static void compare(Printed.Row line, Contribution found, double slack) {
        String symbol = line.text("symbol");
        assertDigits(line.text("std_unc"), found.standardUncertainty(), 0.5, symbol);
        assertDigits(line.text("sens_coeff"), found.sensitivity(), 0.01, symbol);
        assertDigits(line.text("index_percent"), found.indexPercent(), 0.51, symbol);
        String printed = line.text("contribution");
        assertEquals(Double.parseDouble(printed), found.contribution(), slack + halfDigit(printed), symbol);
    }

    private static void compare(Printed.Row combined, Printed.Row expanded, Budget budget, double inherited) {
        String u = combined.text("value");
        assertEquals(Double.parseDouble(u), budget.combined(), inherited + halfDigit(u), "u_c");
        double factorSlack = 1.3e-5; // from 100 000 degrees of freedom up, the table takes k as 2
        if (Double.isFinite(combined.number("dof"))) {
            assertDigits(combined.text("dof"), budget.effectiveDegreesOfFreedom(), 1, "effective degrees of freedom");
            factorSlack = 2.5e-6; // 95.45 % there, two sigma here; untruncated degrees of freedom there
        }
        double slack = 2 * inherited + factorSlack * budget.expanded() + halfDigit(expanded.text("value"));
        assertEquals(expanded.number("value"), budget.expanded(), slack, "U");
    }

    private static double halfDigit(String printed) {
        return 0.5 * new BigDecimal(printed).ulp().doubleValue();
    }

    private static List<Printed.Row> only(List<Printed.Row> rows, String type) {
        return rows.stream().filter(row -> row.text("row_type").equals(type)).toList();
    }

    private static Input input(Printed.Row row) {
        double stated = row.number("value");
        Distribution distribution = switch (row.text("value_type")) {
            case "half_width" -> new Distribution.Rectangular(stated);
            case "U(k=2)" -> new Distribution.Expanded(stated, 2);
            default -> new Distribution.Normal(stated);
        };
        return new Input(
                row.text("symbol"),
                row.text("description"),
                row.number("estimate"),
                row.text("unit"),
                distribution,
                row.number("dof"),
                Origin.ASSUMED,
                "worked example");
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
