// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The series that stand in for {@code StrictMath} near the usual places agree with it (fdlibm, off by less than one unit
 * of the last place itself), inside the series' range, beyond it, and where both meet.
 */
class ElementaryTest {
    private static final long SEED = 1976;
    private static final int CASES = 200_000;

    @Test
    void the_logarithm_of_a_temperature_is_that_of_the_library() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            double kelvin = 170 + 310 * random.nextDouble();
            double library = StrictMath.log(kelvin);
            assertEquals(library, LogKelvin.of(kelvin), 1.5 * Math.ulp(library), "seed " + SEED + ", " + kelvin + " K");
        }
    }

    @Test
    void the_exponential_near_zero_is_that_of_the_library() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            double x = 0.08 * random.nextDouble() - 0.04;
            double library = StrictMath.exp(x);
            assertEquals(library, Elementary.STRICT.expNearZero(x), 1.5 * Math.ulp(library), "seed " + SEED + ", " + x);
        }
        assertEquals(1, Elementary.STRICT.expNearZero(0), 0);
    }

    @Test
    void arrays_give_the_bits_of_single_values() {
        Random random = new Random(SEED);
        for (double width : new double[] {10, 300}) {
            double[] kelvin =
                    random.doubles(500, 300 - width / 2, 300 + width / 2).toArray();
            double[] logs = new double[kelvin.length];
            LogKelvin.of(kelvin, kelvin.length, logs);
            double[] near = random.doubles(500, -width / 1e3, width / 1e3).toArray();
            double[] powers = near.clone();
            Elementary.STRICT.expNearZero(powers, powers.length);
            for (int i = 0; i < kelvin.length; i++) {
                assertEquals(LogKelvin.of(kelvin[i]), logs[i], 0);
                assertEquals(Elementary.STRICT.expNearZero(near[i]), powers[i], 0);
            }
        }
    }
}
