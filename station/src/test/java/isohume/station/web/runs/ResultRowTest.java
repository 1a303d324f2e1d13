// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Direction;
import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.result.PointResult;
import isohume.uncertainty.Budget;
import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Origin;
import isohume.uncertainty.conformity.Conformity;
import isohume.uncertainty.conformity.Decision;
import isohume.uncertainty.conformity.DecisionRule;
import isohume.uncertainty.conformity.Tolerance;
import isohume.uncertainty.montecarlo.MonteCarlo;
import isohume.uncertainty.montecarlo.Settings;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ResultRowTest {
    @Test
    void everything_is_rounded_to_the_second_digit_of_u() {
        ResultRow row = ResultRow.of("R-1", result(0.4749, 0.1851, Optional.empty()));
        assertEquals("+0.47", row.error().toString());
        assertEquals("0.37", row.expanded().toString());
        assertEquals("50.47", row.reading().toString());
        assertEquals("50.00", row.reference().toString());
        assertEquals("", row.verdict());
    }

    @Test
    void a_verdict_is_words_with_a_mark_and_its_tolerance() {
        ResultRow row = ResultRow.of("R-1", result(1.9, 0.2, Optional.of(2.0)));
        assertEquals("±2", row.tolerance());
        assertEquals("conforms on the guard band's edge", row.verdict());
        assertTrue(row.mark().toString().contains("aria-hidden"));
    }

    @Test
    void every_number_says_where_it_can_be_opened() {
        ResultRow row = ResultRow.of("R-1", result(0.5, 0.2, Optional.empty()));
        assertEquals("/runs/R-1/budget/A-1042/relative_humidity/3", row.budget());
        assertEquals("/runs/R-1/readings/3", row.readings());
    }

    @Test
    void a_budget_puts_the_largest_contribution_first_and_its_shares_sum_to_a_hundred() {
        BudgetView view = BudgetView.of("R-1", result(0.5, 0.2, Optional.empty()));
        assertEquals("big", view.rows().get(0).symbol());
        double shares = view.rows().stream()
                .mapToDouble(r -> Double.parseDouble(r.percent().toString()))
                .sum();
        assertEquals(100, shares, 0.2);
    }

    @Test
    void a_budget_says_what_the_monte_carlo_method_found() {
        PointResult result = result(0.5, 0.2, Optional.empty());
        BudgetView.SecondMethod second = BudgetView.of("R-1", result).second();
        assertTrue(second.agrees());
        assertEquals("100\u2009000", second.trials());
        assertEquals("1", second.seed());
        assertEquals("0.400", second.reported());
        assertTrue(second.low().startsWith("+0.1") || second.low().startsWith("+0.09"), second.low());
    }

    private static PointResult result(double error, double standard, Optional<Double> tolerance) {
        Budget budget = Budget.of(
                "error",
                "% RH",
                List.of(
                        input("small", error, standard * 0.6),
                        input("big", 0, standard * 0.8)), // 0.6 and 0.8 make 1 in quadrature
                values -> values[0] + values[1]);
        Optional<Decision> decision = tolerance.map(t -> Conformity.decide(
                budget.value(),
                budget.expanded(),
                budget.coverageFactor(),
                Tolerance.symmetric(t),
                DecisionRule.FOUR_OUTCOMES));
        return new PointResult(
                "A-1042",
                Quantity.RELATIVE_HUMIDITY,
                new Point(3, Temperature.ofCelsius(23), RelativeHumidity.ofPercent(50), Direction.ASCENDING),
                50,
                50 + error,
                MonteCarlo.propagate(budget, Settings.validating(1)),
                decision,
                30,
                12.3,
                new PointResult.Conditions(
                        12, Phase.WATER, "the mirror", 23, 50, 101_325, Instant.EPOCH, Instant.EPOCH));
    }

    private static Input input(String symbol, double estimate, double standard) {
        return Input.of(
                symbol, symbol, estimate, "% RH", new Distribution.Normal(standard), Origin.ASSUMED, "invented");
    }
}
