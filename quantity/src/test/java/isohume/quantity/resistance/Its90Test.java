// SPDX-License-Identifier: Apache-2.0
package isohume.quantity.resistance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import isohume.quantity.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class Its90Test {
    private static final Its90 IDEAL = new Its90(25, List.of(), List.of());

    /** Wr at the fixed points: table 1 of the ITS-90 (Metrologia 27 (1990) 3; public copy at its-90.com/table1.html). */
    @ParameterizedTest
    @CsvSource({
        "83.8058, 0.21585975", "234.3156, 0.84414211", "273.16, 1.00000000", "302.9146, 1.11813889",
        "429.7485, 1.60980185", "505.078, 1.89279768", "692.677, 2.56891730", "933.473, 3.37600860"
    })
    void the_reference_function_has_the_scales_values_at_the_fixed_points(double kelvin, double ratio) {
        assertEquals(
                ratio, Its90.reference(kelvin), 1e-8); // the functions and the table agree to a unit of the last digit
        if (kelvin > 84 && kelvin < 933) {
            assertEquals(kelvin, IDEAL.at(25 * ratio).kelvin(), 1e-5);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-189.3, -100, -38.8344, -5, 0, 0.01, 5, 23, 156.6, 419.5, 660.3})
    void a_thermometer_with_deviations_leads_back_to_the_temperature_it_came_from(double celsius) {
        Its90 own = new Its90(25.4321, List.of(-1.2e-4, -3.0e-6, 2.0e-6), List.of(-1.3e-4, 8.0e-6));
        assertEquals(celsius, own.at(own.ohms(Temperature.ofCelsius(celsius))).celsius(), 1e-7);
    }

    @Test
    void a_deviation_is_taken_from_the_ratio() {
        // By hand at gallium: W = Wr + a (W − 1) gives W = (Wr − a) / (1 − a), eq. 14 with b = c = 0.
        double a = -2.0e-4;
        double w = (1.11813889 - a) / (1 - a);
        Its90 own = new Its90(100, List.of(a), List.of());
        assertEquals(302.9146, own.at(100 * w).kelvin(), 1e-5);
        // and below: W = Wr + a (W − 1) at mercury, eq. 13 with b = 0
        double v = (0.84414211 - a) / (1 - a);
        assertEquals(234.3156, new Its90(100, List.of(), List.of(a)).at(100 * v).kelvin(), 1e-5);
    }

    @Test
    void beyond_argon_and_aluminium_it_refuses() {
        assertThrows(IllegalArgumentException.class, () -> IDEAL.at(5));
        assertThrows(IllegalArgumentException.class, () -> IDEAL.at(85));
        assertThrows(IllegalArgumentException.class, () -> IDEAL.at(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> IDEAL.ohms(Temperature.ofCelsius(-200)));
        assertThrows(IllegalArgumentException.class, () -> new Its90(0, List.of(), List.of()));
    }
}
