// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
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

    /** Beside fdlibm, which is off by up to one unit itself, and beside eighty decimal digits. */
    @Test
    void the_exponential_is_that_of_the_library() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            double x = 64 * random.nextDouble() - 42;
            double library = StrictMath.exp(x);
            assertEquals(library, Exponential.of(x), 1.5 * Math.ulp(library), "seed " + SEED + ", " + x);
        }
        for (double x : new double[] {-800, -40, Math.nextDown(-40), 0, -0.0, 20, Math.nextUp(20), 800}) {
            assertEquals(StrictMath.exp(x), Exponential.of(x), Math.ulp(StrictMath.exp(x)), "at " + x);
        }
        assertTrue(Double.isNaN(Exponential.of(Double.NaN)));
    }

    /** Half a unit for the last sum; below it stand the rounding of what is added, 1/64, and of the series, 3/64. */
    @Test
    void the_exponential_is_right_to_little_more_than_half_a_unit() {
        Random random = new Random(SEED);
        MathContext digits = new MathContext(80);
        for (int i = 0; i < 1000; i++) {
            double x = 60 * random.nextDouble() - 40;
            BigDecimal exact = BigDecimal.ONE;
            BigDecimal term = BigDecimal.ONE;
            for (int n = 1; n < 250; n++) {
                term = term.multiply(new BigDecimal(x), digits).divide(BigDecimal.valueOf(n), digits);
                exact = exact.add(term, digits);
            }
            double found = Exponential.of(x);
            double units = new BigDecimal(found).subtract(exact).doubleValue() / Math.ulp(found);
            assertTrue(Math.abs(units) < 0.57, "seed " + SEED + ", " + x + ": " + units + " units");
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
            double[] wide = random.doubles(500, -width / 8, width / 16).toArray();
            double[] exponentials = wide.clone();
            Exponential.of(exponentials, exponentials.length);
            for (int i = 0; i < kelvin.length; i++) {
                assertEquals(LogKelvin.of(kelvin[i]), logs[i], 0);
                assertEquals(Elementary.STRICT.expNearZero(near[i]), powers[i], 0);
                assertEquals(Exponential.of(wide[i]), exponentials[i], 0);
            }
        }
    }
}
