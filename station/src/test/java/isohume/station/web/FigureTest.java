// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class FigureTest {
    @Test
    void a_negative_number_carries_a_true_minus_sign() {
        assertEquals("−10.25", Figure.of(-10.25, 2).toString());
    }

    @Test
    void what_rounds_to_zero_has_no_sign() {
        assertEquals("0.00", Figure.of(-0.001, 2).toString());
        assertEquals("0.00", Figure.signed(0.001, 2).toString());
    }

    @Test
    void thousands_are_set_apart_from_five_digits_on() {
        assertEquals("1408.21", Figure.of(1408.214, 2).toString());
        assertEquals("101\u2009325", Figure.of(101_325, 0).toString());
    }

    @Test
    void an_error_shows_its_sign() {
        assertEquals("+0.31", Figure.signed(0.31, 2).toString());
        assertEquals("−0.31", Figure.signed(-0.31, 2).toString());
    }

    @Test
    void what_is_no_number_is_a_dash() {
        assertEquals("–", Figure.of(Double.NaN, 2).toString());
        assertEquals("–", Figure.signed(Double.POSITIVE_INFINITY, 2).toString());
    }
}
