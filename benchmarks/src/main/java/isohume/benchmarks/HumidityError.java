// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.moistair.MoistAirBatch;
import isohume.moistair.OutsideRange;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;
import isohume.uncertainty.Model;
import java.util.Arrays;

/** The model of {@link HumidityBudget}: what a probe shows less the relative humidity from dew point and temperature. */
final class HumidityError implements Model {
    private static final double CHAMBER_PASCALS = 101_325;

    private final MoistAir air = MoistAir.by(Formulation.SONNTAG_1990);
    private final MoistAirBatch batch = air.batch();

    @Override
    public double of(double[] x) {
        double reference = air.relativeHumidity(
                        DewPoint.overWater(Temperature.ofCelsius(x[0] + x[1] + x[2] + x[3] + x[4])),
                        Pressure.ofPascals(CHAMBER_PASCALS + x[5]),
                        Temperature.ofCelsius(x[6] + x[7] + x[8] + x[9]),
                        Pressure.ofPascals(CHAMBER_PASCALS))
                .fraction();
        return error(x[12] + x[13], reference, x[10] + x[11]);
    }

    @Override
    public void ofEach(double[][] x, int trials, double[] out) {
        double[] point = new double[trials];
        double[] mirror = new double[trials];
        double[] temperature = new double[trials];
        double[] chamber = new double[trials];
        for (int k = 0; k < trials; k++) {
            point[k] = x[0][k] + x[1][k] + x[2][k] + x[3][k] + x[4][k];
            mirror[k] = CHAMBER_PASCALS + x[5][k];
            temperature[k] = x[6][k] + x[7][k] + x[8][k] + x[9][k];
        }
        Arrays.fill(chamber, CHAMBER_PASCALS);
        double[] reference = out.length == trials ? out : new double[trials];
        try {
            batch.relativeHumidity(point, mirror, temperature, chamber, Phase.WATER, reference);
        } catch (OutsideRange oneOfThem) {
            Model.super.ofEach(x, trials, out);
            return;
        }
        for (int k = 0; k < trials; k++) {
            out[k] = error(x[12][k] + x[13][k], reference[k], x[10][k] + x[11][k]);
        }
    }

    private static double error(double shown, double reference, double relative) {
        return shown - 100 * reference * (1 + relative);
    }
}
