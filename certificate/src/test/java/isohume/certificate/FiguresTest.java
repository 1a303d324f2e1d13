// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
    /** The first is the GUM's own example, JCGM 100:2008, 7.2.6; the others are rounded by hand by the same clause. */
    @ParameterizedTest
    @CsvSource({
        "10.05762, 0.027, 10.058, 0.027",
        "-12.3456, 0.1049, \u221212.35, 0.10",
        "50.25, 0.05, 50.250, 0.050",
        "99.95, 0.996, 100.0, 1.0",
        "7, 14.4, 7, 14"
    })
    void a_value_is_printed_to_the_second_digit_of_its_uncertainty(
            double value, double expanded, String printed, String uncertainty) {
        Rounding place = new Rounding(expanded);
        assertEquals(printed, place.print(value));
        assertEquals(uncertainty, place.print());
    }

    @Test
    void an_error_has_its_sign_and_zero_has_none() {
        Rounding place = new Rounding(0.12);
        assertEquals("+0.30", place.printSigned(0.3));
        assertEquals("\u22120.30", place.printSigned(-0.3));
        assertEquals("0.00", place.printSigned(0.004));
        assertEquals("0.00", place.printSigned(-0.004));
    }

    @Test
    void an_uncertainty_of_zero_is_refused_and_not_printed() {
        assertThrows(IllegalArgumentException.class, () -> new Rounding(0).print());
    }

    @Test
    void a_unit_stands_behind_a_thin_space_that_does_not_break() {
        assertEquals("45.2\u202F%\u00A0RH", Figures.withUnit("45.2", "% RH"));
    }

    @Test
    void what_is_no_number_is_a_dash() {
        assertEquals("\u2013", Figures.of(Double.NaN, 2));
    }

    @Test
    void point_numbers_that_follow_each_other_are_drawn_together() {
        assertEquals("1 to 3, 5, 7 to 8", DecisionSection.ranges(java.util.List.of(1, 2, 3, 5, 7, 8)));
    }
}
