// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Quantity;
import java.util.function.LongToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Over many seeds the drawn parts have the spread that certificates and characterisation state. A standard deviation from
 * 1000 draws scatters by 2.2 % of itself, so four times that is allowed; a mean by 3.2 % of the standard deviation.
 */
class DrawnPartsTest {
    private static final int SEEDS = 1000;

    private static void assertSpread(double standardDeviation, LongToDoubleFunction draw) {
        double sum = 0;
        double squares = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            double value = draw.applyAsDouble(seed);
            sum += value;
            squares += value * value;
        }
        double mean = sum / SEEDS;
        assertEquals(0, mean, 4 * standardDeviation / StrictMath.sqrt(SEEDS));
        assertEquals(standardDeviation, StrictMath.sqrt(squares / SEEDS - mean * mean), 0.09 * standardDeviation);
    }

    /** u² of a certificate U = 0.10 K (k = 2) and of rectangular parts a²/3: drift 0.05, condensate 0.03, line 0.02. */
    @ParameterizedTest(name = "at {0} °C")
    @CsvSource({"21.3, 0.02", "12, 0.02", "0, 0.02", "-9.11, 0.05", "-25, 0.05"})
    void the_mirror(double point, double line) {
        double expected = StrictMath.sqrt(0.05 * 0.05 + (0.05 * 0.05 + 0.03 * 0.03 + line * line) / 3);
        assertSpread(
                expected,
                seed -> new MirrorTrueness(MirrorSpecification.standard(), 1, Chance.of(seed, "mirror")).error(point));
    }

    /** Certificate U = 0.04 K (k = 2); drift 0.02, self-heating 0.01, radiation 0.03 as rectangular half-widths. */
    @Test
    void the_thermometer() {
        double expected = StrictMath.sqrt(0.02 * 0.02 + (0.02 * 0.02 + 0.01 * 0.01 + 0.03 * 0.03) / 3);
        assertSpread(
                expected,
                seed -> new World(BenchParameters.portable(), seed)
                        .shown("thermometer", Quantity.TEMPERATURE)
                        .trueError()
                        .getAsDouble());
    }

    @ParameterizedTest(name = "{0} K above the room within {1} K")
    @CsvSource({"0, 0.10", "-13, 0.15", "17, 0.20"})
    void the_difference_between_thermometer_and_instrument(double aboveRoom, double halfWidth) {
        BenchParameters parameters = BenchParameters.portable();
        double limit = halfWidth + 0.03; // and the load
        int inner = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            double difference = new Place(parameters, Chance.of(seed, "A-1042")).difference(aboveRoom);
            assertTrue(Math.abs(difference) <= limit + 1e-9);
            inner += Math.abs(difference) < halfWidth / 2 ? 1 : 0;
        }
        assertSpread(
                StrictMath.sqrt((halfWidth * halfWidth + 0.03 * 0.03) / 3),
                seed -> new Place(parameters, Chance.of(seed, "A-1042")).difference(aboveRoom));
        assertTrue(inner > 0.4 * SEEDS && inner < 0.6 * SEEDS, "neither always zero nor always at the limit");
    }

    @Test
    void two_places_have_nothing_to_do_with_each_other() {
        BenchParameters parameters = BenchParameters.portable();
        double sum = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            sum += new Place(parameters, Chance.of(seed, "A-1042")).difference(0)
                    * new Place(parameters, Chance.of(seed, "B-2077")).difference(0);
        }
        double variance = (0.10 * 0.10 + 0.03 * 0.03) / 3;
        assertEquals(0, sum / SEEDS / variance, 4 / StrictMath.sqrt(SEEDS));
    }

    @Test
    void far_from_the_room_the_pattern_of_temperatures_becomes_another() {
        BenchParameters parameters = BenchParameters.portable();
        int turned = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Place place = new Place(parameters, Chance.of(seed, "A-1042"));
            turned += place.difference(-18) * place.difference(17) < 0 ? 1 : 0;
        }
        int different = turned;
        assertTrue(different > 0.1 * SEEDS, () -> different + " of " + SEEDS + " places change sign");
    }
}
