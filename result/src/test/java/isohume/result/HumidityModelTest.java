// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.Phase;
import org.junit.jupiter.api.Test;

class HumidityModelTest {
    private final HumidityModel model = new HumidityModel(MoistAir.by(Formulation.SONNTAG_1990), Phase.WATER, 101_325);

    /** A t of one or two degrees of freedom draws a temperature below 0 K now and then. */
    @Test
    void a_draw_that_no_air_can_have_has_no_value_and_the_others_keep_theirs() {
        double[][] sums = {{50, 50, 50}, {12, 12, 12}, {23, -290, 23}, {0, 0, 0}, {0, 0, 0}, {0, 0, 0}};
        double[] out = new double[3];
        model.ofEach(sums, 3, out);
        assertEquals(model.of(new double[] {50, 12, 23, 0, 0, 0}), out[0]);
        assertTrue(Double.isNaN(out[1]), "no air is at -290 °C");
        assertEquals(out[0], out[2]);
    }
}
