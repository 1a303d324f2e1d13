// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.conformity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import isohume.uncertainty.Printed;
import org.junit.jupiter.api.Test;

class ConformityTest {
    @Test
    void twenty_five_decisions_computed_independently_agree() {
        for (Printed.Row row : Printed.table("conformity_points_computed.csv")) {
            double expanded = 2 * row.number("u");
            Decision simple = decide(row, expanded, DecisionRule.SIMPLE_ACCEPTANCE);
            Decision guarded = decide(row, expanded, DecisionRule.GUARD_BAND_U);
            Decision four = decide(row, expanded, DecisionRule.FOUR_OUTCOMES);
            assertEquals(
                    row.text("simple_acceptance").equals("pass"),
                    simple.verdict().isAccepted(),
                    row.toString());
            assertEquals(
                    row.text("guarded_w_equals_U").equals("pass"),
                    guarded.verdict().isAccepted(),
                    row.toString());
            assertEquals(verdict(row.text("nonbinary_w_equals_U")), four.verdict(), row.toString());
            assertEquals(row.number("p_conform"), four.conformanceProbability(), 1e-12, row.toString());
        }
    }

    private static Decision decide(Printed.Row row, double expanded, DecisionRule rule) {
        double lower = row.has("T_L") ? row.number("T_L") : Double.NEGATIVE_INFINITY;
        double upper = row.has("T_U") ? row.number("T_U") : Double.POSITIVE_INFINITY;
        return Conformity.decide(row.number("y"), expanded, 2, new Tolerance(lower, upper), rule);
    }

    private static Verdict verdict(String words) {
        return switch (words) {
            case "pass" -> Verdict.CONFORMS;
            case "conditional pass" -> Verdict.CONFORMS_IN_GUARD_BAND;
            case "conditional fail" -> Verdict.NOT_DECIDED;
            case "fail" -> Verdict.DOES_NOT_CONFORM;
            default -> throw new IllegalArgumentException(words);
        };
    }

    @Test
    void simple_acceptance_marks_what_lies_in_the_guard_band() {
        Tolerance tolerance = Tolerance.symmetric(1.5);
        assertEquals(Verdict.CONFORMS, simple(0.7, tolerance));
        assertEquals(Verdict.CONFORMS_IN_GUARD_BAND, simple(-1.2, tolerance));
        assertEquals(Verdict.DOES_NOT_CONFORM, simple(1.54, tolerance));
    }

    private static Verdict simple(double error, Tolerance tolerance) {
        return Conformity.decide(error, 0.77, 2, tolerance, DecisionRule.SIMPLE_ACCEPTANCE)
                .verdict();
    }

    @Test
    void limits_are_compared_in_decimals() {
        Decision decision = Conformity.decide(0.2, 0.1, 2, Tolerance.symmetric(0.3), DecisionRule.GUARD_BAND_U);
        assertEquals(Verdict.CONFORMS, decision.verdict());
        assertEquals(0.2, decision.acceptanceUpper());
        assertEquals(-0.2, decision.acceptanceLower());
    }

    @Test
    void nothing_is_accepted_when_the_uncertainty_fills_the_tolerance() {
        Decision decision = Conformity.decide(0, 0.4, 2, Tolerance.symmetric(0.3), DecisionRule.GUARD_BAND_U);
        assertFalse(decision.acceptanceIsPossible());
        assertEquals(Verdict.DOES_NOT_CONFORM, decision.verdict());
    }

    @Test
    void impossible_questions_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> new Tolerance(1, -1));
        assertThrows(IllegalArgumentException.class, () -> simple(Double.NaN, Tolerance.symmetric(1)));
    }
}
