// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class RoundedTest {
    @Test
    void worked_roundings_computed_with_decimal_arithmetic_agree() {
        int compared = 0;
        for (Printed.Row row : Printed.table("rounding_examples.csv")) {
            if (row.text("rule").equals("5%")) {
                Rounded found = Rounded.of(row.number("y"), row.number("U_unrounded"), (int) row.number("digits"));
                assertEquals(plain(row.text("U_rounded")), found.uncertainty().toPlainString(), row.toString());
                assertEquals(plain(row.text("y_rounded")), found.value().toPlainString(), row.toString());
                compared++;
            }
        }
        assertEquals(32, compared);
    }

    private static String plain(String text) {
        return new BigDecimal(text).toPlainString();
    }

    @Test
    void examples_of_gum_726() {
        assertEquals("10.058 ± 0.027", Rounded.of(10.05762, 0.027).toString());
        assertEquals("28", Rounded.of(0, 28.05).uncertainty().toPlainString());
    }

    @Test
    void hundreds_are_written_out() {
        assertEquals("101330 ± 120", Rounded.of(101327, 123).toString());
    }

    @Test
    void what_has_no_uncertainty_cannot_be_rounded() {
        assertThrows(IllegalArgumentException.class, () -> Rounded.of(1, 0));
        assertThrows(IllegalArgumentException.class, () -> Rounded.of(Double.NaN, 1));
    }
}
