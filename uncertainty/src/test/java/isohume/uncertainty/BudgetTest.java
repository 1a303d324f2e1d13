// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class BudgetTest {
    private static Input input(String symbol, double estimate, double u) {
        return Input.of(symbol, symbol, estimate, "K", new Distribution.Normal(u), Origin.ASSUMED, "hand derivation");
    }

    @Test
    void sensitivities_are_the_derivatives_done_by_hand() {
        List<Input> inputs = List.of(input("a", 2, 0.1), input("b", 0.5, 0.05));
        Budget budget = Budget.of("y", "1", inputs, x -> StrictMath.exp(x[0]) * x[1] * x[1]);
        assertEquals(StrictMath.exp(2) * 0.25, budget.contributions().get(0).sensitivity(), 5e-7);
        assertEquals(StrictMath.exp(2) * 2 * 0.5, budget.contributions().get(1).sensitivity(), 1e-11);
    }

    @Test
    void a_constant_still_has_a_sensitivity_but_no_contribution() {
        Budget budget = Budget.of("y", "1", List.of(input("a", 3, 0)), x -> x[0] * x[0]);
        assertEquals(6, budget.contributions().getFirst().sensitivity(), 1e-9);
        assertEquals(0, budget.combined());
        assertEquals(0, budget.expanded());
    }

    @Test
    void fully_correlated_inputs_of_opposite_sign_cancel() {
        List<Input> inputs = List.of(input("a", 20, 0.1), input("b", 19, 0.1));
        Budget budget = Budget.of(
                "a - b", "K", inputs, x -> x[0] - x[1], Correlations.between("a", "b", 1), Coverage.TWO_SIGMA);
        assertEquals(0, budget.combined(), 1e-12);
    }

    @Test
    void with_well_known_uncertainties_k_is_two() {
        Budget budget = Budget.of("y", "K", List.of(input("a", 20, 0.1)), x -> x[0]);
        assertEquals(2.0, budget.coverageFactor());
        assertEquals(Double.POSITIVE_INFINITY, budget.effectiveDegreesOfFreedom());
    }

    @Test
    void contradicting_correlations_are_refused_by_name() {
        List<Input> inputs = List.of(input("a", 1, 1), input("b", 1, 1), input("c", 1, 1));
        Correlations impossible =
                Correlations.between("a", "b", 0.9).and("b", "c", 0.9).and("a", "c", -0.9);
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class, () -> Budget.of("y", "1", inputs, x -> x[0], impossible, 0.95));
        assertTrue(refusal.toString().contains("c and b"), refusal.toString());
    }

    @Test
    void correlations_of_unknown_inputs_are_refused_by_name() {
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class,
                () -> Budget.of(
                        "y", "1", List.of(input("a", 1, 1)), x -> x[0], Correlations.between("a", "z", 0.5), 0.95));
        assertTrue(refusal.toString().contains("names z"), refusal.toString());
    }

    @Test
    void a_model_without_a_value_is_refused_by_input() {
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class,
                () -> Budget.of("y", "1", List.of(input("a", 0, 1)), x -> Math.sqrt(x[0])));
        assertTrue(refusal.toString().contains("sensitivity to a"), refusal.toString());
    }

    @Test
    void two_inputs_of_one_symbol_are_refused() {
        List<Input> inputs = List.of(input("a", 1, 1), input("a", 2, 1));
        assertThrows(IllegalArgumentException.class, () -> Budget.of("y", "1", inputs, x -> x[0]));
    }
}
