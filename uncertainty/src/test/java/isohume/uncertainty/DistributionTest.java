// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class DistributionTest {
    @Test
    void half_widths_become_standard_uncertainties_as_in_the_gum() {
        assertEquals(2.309401077, new Distribution.Rectangular(4).standardUncertainty(), 1e-9, "GUM 4.4.5");
        assertEquals(1.632993162, new Distribution.Triangular(4).standardUncertainty(), 1e-9, "GUM 4.4.6");
        assertEquals(0.3535533906, new Distribution.UShaped(0.5).standardUncertainty(), 1e-10, "GUM H.1, u(Delta)");
    }

    @Test
    void ratios_of_standard_uncertainty_to_half_width_agree_with_closed_forms() {
        for (Printed.Row row : Printed.table("coverage_factors_computed.csv")) {
            if (row.has("u_over_halfwidth")) {
                double found = distribution(row).standardUncertainty();
                assertEquals(row.number("u_over_halfwidth"), found, 1e-11, row.toString());
            }
        }
    }

    private static Distribution distribution(Printed.Row row) {
        return switch (row.text("distribution")) {
            case "rectangular" -> new Distribution.Rectangular(1);
            case "triangular" -> new Distribution.Triangular(1);
            case "arcsine" -> new Distribution.UShaped(1);
            case "trapezoid" ->
                new Distribution.Trapezoidal(
                        1, Double.parseDouble(row.text("parameter").substring("beta=".length())));
            default -> throw new IllegalArgumentException(row.toString());
        };
    }

    @Test
    void divisors_read_as_in_a_budget() {
        assertEquals("2", new Distribution.Expanded(0.1, 2).divisor());
        assertEquals("2.87", new Distribution.Expanded(0.1, 2.87).divisor());
        assertEquals("10", new Distribution.Expanded(0.1, 10).divisor());
        assertEquals("√3", new Distribution.Rectangular(0.1).divisor());
        assertEquals("√7.6", new Distribution.MeanOfReadings(0.1, 7.6).divisor());
    }

    @Test
    void impossible_widths_are_refused_with_the_value() {
        IllegalArgumentException negative =
                assertThrows(IllegalArgumentException.class, () -> new Distribution.Rectangular(-0.1));
        assertTrue(negative.toString().contains("-0.1"), negative.toString());
        assertThrows(IllegalArgumentException.class, () -> new Distribution.Normal(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Distribution.Expanded(0.1, 0));
        assertThrows(IllegalArgumentException.class, () -> new Distribution.Trapezoidal(0.1, 1.1));
    }
}
