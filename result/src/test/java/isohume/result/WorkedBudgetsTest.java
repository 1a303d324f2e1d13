// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.uncertainty.Budget;
import isohume.uncertainty.Contribution;
import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Origin;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Worked budgets (worked-budgets.csv), computed independently of this program from the formulas of Sonntag 1990 and
 * Greenspan 1976 at 101 325 Pa, ice where the dew point is below 0 °C. There the sensitivities are those of the
 * reference; here the measurand is the error, so those of references have the opposite sign and sizes are compared.
 */
class WorkedBudgetsTest {
    private static final MoistAir AIR = MoistAir.by(Formulation.SONNTAG_1990);
    private static final Pattern CELL = Pattern.compile("\"([^\"]*)\"(?:,|$)|([^,]*)(?:,|$)");

    @TestFactory
    Stream<DynamicTest> budgets_agree_in_every_contribution_and_in_the_expanded_uncertainty() {
        Map<String, List<Map<String, String>>> budgets = new LinkedHashMap<>();
        for (Map<String, String> row : rows()) {
            if (!text(row, "budget").equals("a_RH_dewpoint_corr")) {
                budgets.computeIfAbsent(text(row, "budget") + " at " + text(row, "point"), k -> new ArrayList<>())
                        .add(row);
            }
        }
        assertEquals(6, budgets.size());
        return budgets.entrySet().stream().map(e -> dynamicTest(e.getKey(), () -> compare(e.getValue())));
    }

    private static void compare(List<Map<String, String>> rows) {
        List<Map<String, String>> lines =
                rows.stream().filter(r -> text(r, "row_type").equals("input")).toList();
        Budget budget = budget(lines);
        for (int i = 0; i < lines.size(); i++) {
            Contribution found = budget.contributions().get(i);
            String symbol = text(lines.get(i), "symbol");
            same(text(lines.get(i), "sens_coeff"), Math.abs(found.sensitivity()), symbol + " sensitivity");
            same(text(lines.get(i), "contribution"), Math.abs(found.contribution()), symbol + " contribution");
        }
        for (Map<String, String> row : rows) {
            if (text(row, "row_type").equals("combined")) {
                same(text(row, "value"), budget.combined(), "u_c");
            } else if (text(row, "row_type").equals("expanded")) {
                // 95.45 % and whole degrees of freedom there, two sigma here: 3e-6 of U
                double printed = number(row, "value");
                assertEquals(printed, budget.expanded(), halfDigit(text(row, "value")) + 1.5e-5 * printed, "U");
            }
        }
    }

    private static Budget budget(List<Map<String, String>> lines) {
        List<Input> inputs = new ArrayList<>();
        boolean humidity = text(lines.getFirst(), "budget").startsWith("a_");
        lines.forEach(row -> inputs.add(input(row)));
        if (!humidity) {
            return TemperatureModel.budget("error", inputs);
        }
        Phase deposit = number(lines.getFirst(), "estimate") < 0 ? Phase.ICE : Phase.WATER;
        inputs.set(0, withExactDewPoint(inputs.getFirst(), deposit, text(lines.getFirst(), "point")));
        return new HumidityModel(AIR, deposit, 101_325).budget("error", inputs);
    }

    /** The table rounds the dew point of its point to six digits; sensitivities are given to more than that allows. */
    private static Input withExactDewPoint(Input printed, Phase deposit, String point) {
        double percent = Double.parseDouble(point.substring(0, point.indexOf(' ')));
        double exact = AIR.dewPoint(
                        RelativeHumidity.ofPercent(percent),
                        Temperature.ofCelsius(23),
                        Pressure.STANDARD,
                        Pressure.STANDARD,
                        deposit)
                .celsius();
        assertEquals(printed.estimate(), exact, 5e-5, "dew point of " + point);
        return new Input(
                printed.symbol(),
                printed.description(),
                exact,
                printed.unit(),
                printed.distribution(),
                printed.degreesOfFreedom(),
                printed.origin(),
                printed.evidence());
    }

    private static Input input(Map<String, String> row) {
        double stated = number(row, "value");
        Distribution distribution = switch (text(row, "value_type")) {
            case "half_width" -> new Distribution.Rectangular(stated);
            case "U(k=2)" -> new Distribution.Expanded(stated, 2);
            default -> new Distribution.Normal(stated);
        };
        String dof = text(row, "dof");
        return new Input(
                text(row, "symbol"),
                text(row, "description"),
                number(row, "estimate"),
                text(row, "unit"),
                distribution,
                dof.equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(dof),
                Origin.ASSUMED,
                "worked example");
    }

    /** Equal to the digits given: six of them, the last one within one step for their central difference. */
    private static void same(String printed, double found, String what) {
        assertEquals(Math.abs(Double.parseDouble(printed)), found, 2 * halfDigit(printed), what);
    }

    private static double halfDigit(String printed) {
        return 0.5 * new BigDecimal(printed).ulp().doubleValue();
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(text(row, column));
    }

    private static String text(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }

    private static List<Map<String, String>> rows() {
        InputStream resource =
                Objects.requireNonNull(WorkedBudgetsTest.class.getResourceAsStream("worked-budgets.csv"));
        try (BufferedReader in = new BufferedReader(new InputStreamReader(resource, StandardCharsets.UTF_8))) {
            List<String> header = cells(in.readLine());
            List<Map<String, String>> rows = new ArrayList<>();
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                List<String> cells = cells(line);
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < header.size(); i++) {
                    row.put(header.get(i), cells.get(i));
                }
                rows.add(row);
            }
            return rows;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        Matcher matcher = CELL.matcher(line);
        while (matcher.find() && cells.size() < 20) {
            cells.add(matcher.group(1) != null ? matcher.group(1) : matcher.group(2));
        }
        return cells;
    }
}
