// SPDX-License-Identifier: Apache-2.0
package isohume.quantity.resistance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CallendarVanDusenTest {
    private static final CallendarVanDusen PT100 = CallendarVanDusen.iec60751(100);

    /**
     * Resistances of the table of IEC 60751 as two makers' public copies of it print them (sensorsci.com/reference.htm;
     * scribd.com/document/366724594, "Pt100 platinum resistor"); tolerance: half the last printed digit.
     */
    @ParameterizedTest
    @CsvSource({
        "-200, 18.52", "-190, 22.83", "-150, 39.72", "-100, 60.26", "-50, 80.31", "-40, 84.27", "-20, 92.16",
        "-10, 96.09", "0, 100.00", "10, 103.90", "20, 107.79", "50, 119.40", "100, 138.51", "150, 157.33",
        "200, 175.86", "300, 212.05", "400, 247.09", "500, 280.98", "600, 313.71"
    })
    void has_the_resistances_of_the_standards_table(double celsius, double ohms) {
        assertEquals(ohms, PT100.ohms(Temperature.ofCelsius(celsius)), 0.005 + 1e-9);
        if (celsius > -200) { // there, the printed value is rounded to one beyond the range
            assertEquals(celsius, PT100.at(ohms).celsius(), 0.005 / 0.33); // at least 0.33 Ω/K up to 600 °C
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-200, -123.456, -0.01, 0, 0.01, 23, 99.99, 419.5, 849.9})
    void leads_back_to_the_temperature_it_came_from(double celsius) {
        double ohms = PT100.ohms(Temperature.ofCelsius(celsius));
        assertEquals(celsius, PT100.at(ohms).celsius(), 1e-8);
    }

    @Test
    void individual_coefficients_move_it() {
        CallendarVanDusen own = new CallendarVanDusen(100.012, 3.9090e-3, -5.78e-7, -4.2e-12);
        // by hand: 100.012 (1 + 0.39090 − 0.00578) = 138.5286214...
        assertEquals(100.012 * 1.38512, own.ohms(Temperature.ofCelsius(100)), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {18.5, 390.6, 0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void a_resistance_beyond_its_range_is_refused_with_the_range(double ohms) {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> PT100.at(ohms));
        assertTrue(String.valueOf(refusal.getMessage()).contains("Ω"), refusal::getMessage);
    }

    @Test
    void a_temperature_beyond_its_range_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> PT100.ohms(Temperature.ofCelsius(-200.1)));
        assertThrows(IllegalArgumentException.class, () -> PT100.ohms(Temperature.ofCelsius(850.1)));
        assertThrows(IllegalArgumentException.class, () -> new CallendarVanDusen(0, 3.9e-3, -5.8e-7, 0));
    }
}
