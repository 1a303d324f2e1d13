// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Quantity;
import isohume.quantity.Temperature;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a technician finds with the references (reading less the humidity from mirror, thermometer and pressures) against
 * the true error. Neither the references' nor the chamber's figures are used in the evaluation: only the budget tells how
 * far apart the two may be.
 */
class ReferenceChainTest {
    private static final MoistAir AIR = MoistAir.by(Formulation.SONNTAG_1990);
    private static final int SEEDS = 100;
    private static final int SOAK = 2400;
    private static final int READINGS = 60;

    /**
     * Expanded uncertainties of such a calibration without hysteresis, as worked by hand from the half-widths that
     * {@link Uniformity}, {@link MirrorSpecification} and {@link ThermometerSpecification} name: 0.18, 0.61 and 1.05 % RH
     * at 23 °C. They hold 0.02 to 0.04 % RH more than the simulator draws (formulas, rounding, repeatability).
     */
    @ParameterizedTest(name = "at {0} % RH within {1} % RH")
    @CsvSource({"10, 0.18", "50, 0.61", "90, 1.05"})
    void the_error_found_is_as_far_from_the_true_one_as_the_budget_says(double percent, double expanded) {
        double sum = 0;
        double squares = 0;
        int covered = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            double deviation = deviation(seed, percent);
            sum += deviation;
            squares += deviation * deviation;
            covered += Math.abs(deviation) <= expanded ? 1 : 0;
        }
        double mean = sum / SEEDS;
        double ratio = StrictMath.sqrt(squares / SEEDS) / (expanded / 2);
        int within = covered;
        System.out.printf(
                "%.0f %% RH: mean %.3f, u ratio %.2f, %d of %d covered%n", percent, mean, ratio, within, SEEDS);
        assertEquals(0, mean, 4 * expanded / 2 / StrictMath.sqrt(SEEDS));
        assertTrue(ratio > 0.75 && ratio < 1.1, () -> "standard deviation over standard uncertainty " + ratio);
        assertTrue(within >= 0.92 * SEEDS, () -> within + " of " + SEEDS + " within the expanded uncertainty");
    }

    private static double deviation(long seed, double percent) {
        World world = new World(BenchParameters.portable(), seed);
        world.controller().want(23, percent);
        world.controller().run(true);
        Quiet.pass(world, SOAK);
        double found = 0;
        double truth = 0;
        for (int i = 0; i < READINGS; i++) {
            Quiet.pass(world, 10);
            found += shown(world, "A-1042", Quantity.RELATIVE_HUMIDITY) - reference(world);
            truth += world.shown("A-1042", Quantity.RELATIVE_HUMIDITY)
                    .trueError()
                    .getAsDouble();
        }
        return (found - truth) / READINGS;
    }

    private static double reference(World world) {
        Phase phase = world.mirror().deposit() == Mirror.Deposit.ICE ? Phase.ICE : Phase.WATER;
        DewPoint point = new DewPoint(Temperature.ofCelsius(shown(world, "mirror", Quantity.DEW_POINT)), phase);
        double mirror = world.thermometer().mirrorPressure().shown().getAsDouble();
        double chamber = shown(world, "thermometer", Quantity.PRESSURE);
        Temperature air = Temperature.ofCelsius(shown(world, "thermometer", Quantity.TEMPERATURE));
        return AIR.relativeHumidity(point, Pressure.ofPascals(mirror), air, Pressure.ofPascals(chamber))
                .percent();
    }

    private static double shown(World world, String instrument, Quantity quantity) {
        return world.shown(instrument, quantity).shown().getAsDouble();
    }
}
