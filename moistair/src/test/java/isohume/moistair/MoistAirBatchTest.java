// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Arrays give what single questions give: the same bits when strict, nearly the same in a preview. */
class MoistAirBatchTest {
    private static final long SEED = 41;
    private static final int SIZE = 2_000;
    private final double[] point = new double[SIZE];
    private final double[] air = new double[SIZE];
    private final double[] mirror = new double[SIZE];
    private final double[] chamber = new double[SIZE];
    private final double[] out = new double[SIZE];

    MoistAirBatchTest() {
        Random random = new Random(SEED);
        for (int i = 0; i < SIZE; i++) {
            point[i] = -40 + 40 * random.nextDouble();
            air[i] = 1 + 58 * random.nextDouble();
            chamber[i] = 8e4 + 2.8e4 * random.nextDouble();
            mirror[i] = chamber[i] * (0.99 + 0.02 * random.nextDouble());
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_batch_gives_the_same_bits_as_single_questions(Formulation formulation) {
        MoistAir single = MoistAir.by(formulation);
        single.batch().relativeHumidity(point, mirror, air, chamber, Phase.ICE, out);
        for (int i = 0; i < SIZE; i++) {
            assertEquals(humidity(single, i), out[i], 0, "seed " + SEED + " element " + i);
        }
        double[] back = new double[SIZE];
        single.batch().dewPoint(out, air, chamber, mirror, Phase.ICE, back);
        for (int i = 0; i < SIZE; i++) {
            assertEquals(point[i], back[i], 1e-8, "seed " + SEED + " element " + i);
        }
        double[] vapour = new double[SIZE];
        single.batch().vapourPressure(point, mirror, Phase.ICE, vapour);
        assertEquals(
                single.vapourPressure(Air.frost(point[7]), Air.pascals(mirror[7]))
                        .pascals(),
                vapour[7],
                0);
    }

    /** Dew points from supercooled to warm in one array, and pressures at which the factors are far from one. */
    @ParameterizedTest
    @EnumSource(names = {"SONNTAG_1990", "HARDY_1998"})
    void a_batch_across_two_surfaces_and_many_pressures_gives_the_same_bits(Formulation formulation) {
        MoistAir single = MoistAir.by(formulation);
        Random random = new Random(SEED);
        for (int i = 0; i < SIZE; i++) {
            point[i] = i < SIZE / 2 ? -49 + 140 * random.nextDouble() : -20 - 29 * random.nextDouble();
            air[i] = i < SIZE / 4 ? point[i] : -49 + 140 * random.nextDouble();
            mirror[i] = 1e5 + 1.9e6 * random.nextDouble();
            chamber[i] = mirror[i] * (1 - 0.01 * random.nextDouble());
        }
        single.batch().relativeHumidity(point, mirror, air, chamber, Phase.WATER, out);
        for (int i = 0; i < SIZE; i++) {
            double alone = single.relativeHumidity(
                            Air.dew(point[i]), Air.pascals(mirror[i]), Air.celsius(air[i]), Air.pascals(chamber[i]))
                    .fraction();
            assertEquals(alone, out[i], 0, "seed " + SEED + " element " + i);
        }
    }

    @Test
    void a_batch_that_touches_zero_gives_the_same_bits() {
        MoistAir single = MoistAir.by(Formulation.DEFAULT);
        for (double aside : new double[] {0, 1e-10, -1e-10}) {
            for (double others : new double[] {-20, 20}) {
                Arrays.fill(point, others);
                point[40] = aside;
                Arrays.fill(air, 30);
                Arrays.fill(mirror, 1e5);
                single.batch().relativeHumidity(point, mirror, air, mirror, Phase.WATER, out);
                double alone = single.relativeHumidity(
                                Air.dew(aside), Air.pascals(1e5), Air.celsius(30), Air.pascals(1e5))
                        .fraction();
                assertEquals(alone, out[40], 0, aside + " °C among " + others + " °C");
            }
        }
    }

    @Test
    void an_empty_batch_is_no_trouble() {
        double[] none = {};
        MoistAir.by(Formulation.DEFAULT).batch().relativeHumidity(none, none, none, none, Phase.WATER, none);
    }

    @Test
    void what_comes_before_a_value_without_an_answer_is_written() {
        MoistAirBatch batch = MoistAir.by(Formulation.DEFAULT).batch();
        point[SIZE - 3] = 5; // over ice
        assertThrows(OutsideRange.class, () -> batch.relativeHumidity(point, mirror, air, chamber, Phase.ICE, out));
        assertTrue(out[SIZE - 4] > 0);
        assertEquals(0, out[SIZE - 3], 0);
    }

    @Test
    void pressures_that_no_formula_vouches_for_stop_the_batch() {
        MoistAirBatch batch = MoistAir.by(Formulation.DEFAULT).batch();
        for (double pascals : new double[] {9_999, 2_000_001, Double.NaN, -1}) {
            chamber[700] = pascals;
            assertThrows(
                    IllegalArgumentException.class,
                    () -> batch.relativeHumidity(point, mirror, air, chamber, Phase.ICE, out),
                    () -> pascals + " Pa");
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_preview_is_off_by_less_than_can_be_drawn(Formulation formulation) {
        MoistAir single = MoistAir.by(formulation);
        single.preview().relativeHumidity(point, mirror, air, chamber, Phase.ICE, out);
        for (int i = 0; i < SIZE; i++) {
            double strict = humidity(single, i);
            assertEquals(strict, out[i], 1e-13 * strict, "seed " + SEED + " element " + i);
        }
    }

    @Test
    void a_value_without_an_answer_stops_the_batch() {
        MoistAirBatch batch = MoistAir.by(Formulation.DEFAULT).batch();
        point[3] = 5;
        assertThrows(OutsideRange.class, () -> batch.relativeHumidity(point, mirror, air, chamber, Phase.ICE, out));
        point[3] = Double.NaN;
        assertThrows(
                IllegalArgumentException.class,
                () -> batch.relativeHumidity(point, mirror, air, chamber, Phase.ICE, out));
    }

    @Test
    void arrays_of_different_lengths_are_refused() {
        MoistAirBatch batch = MoistAir.by(Formulation.DEFAULT).batch();
        assertThrows(
                IllegalArgumentException.class,
                () -> batch.relativeHumidity(point, mirror, air, new double[3], Phase.ICE, out));
    }

    private double humidity(MoistAir single, int i) {
        DewPoint frost = Air.frost(point[i]);
        return single.relativeHumidity(frost, Air.pascals(mirror[i]), Air.celsius(air[i]), Air.pascals(chamber[i]))
                .fraction();
    }
}
