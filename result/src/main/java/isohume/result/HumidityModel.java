// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;
import isohume.uncertainty.Budget;
import isohume.uncertainty.Input;
import isohume.uncertainty.Model;
import java.util.Arrays;
import java.util.List;

/**
 * Error of a relative humidity against dew point and air temperature:
 * {@code u − 100 · e(d) f(d, Pm)/Pm · P/(e_w(t) f(t, P)) · (1 + e + f)}, over water or ice as the deposit is, the
 * denominator over water always.
 *
 * <p>Lines enter by their symbols: {@code u_} the reading (% RH), {@code d_} the dew or frost point (°C), {@code t_} the
 * air temperature (°C), {@code dp_} the mirror's pressure above the chamber's (Pa), {@code e_} and {@code f_} the
 * relative errors of the saturation equation and of the ratio of enhancement factors.
 */
record HumidityModel(MoistAir air, Phase deposit, double chamberPascals) implements Model {
    static final List<String> PARTS = List.of("u", "d", "t", "dp", "e", "f");

    Budget budget(String measurand, List<Input> lines) {
        return Budget.of(measurand, "% RH", lines, Parts.over(lines, PARTS, this));
    }

    @Override
    public double of(double[] sums) {
        return error(sums[0], reference(sums[1], sums[2], sums[3]), sums[4], sums[5]);
    }

    @Override
    public void ofEach(double[][] sums, int trials, double[] out) {
        double[] mirror = new double[trials];
        double[] chamber = new double[trials];
        double[] fraction = new double[trials];
        for (int k = 0; k < trials; k++) {
            mirror[k] = chamberPascals + sums[3][k];
            chamber[k] = chamberPascals;
        }
        try {
            air.batch()
                    .relativeHumidity(
                            first(sums[1], trials), mirror, first(sums[2], trials), chamber, deposit, fraction);
        } catch (IllegalArgumentException oneOfThem) { // each alone: a t of few degrees of freedom draws anything
            Model.super.ofEach(sums, trials, out);
            return;
        }
        for (int k = 0; k < trials; k++) {
            out[k] = error(sums[0][k], fraction[k] * 100, sums[4][k], sums[5][k]);
        }
    }

    private static double[] first(double[] column, int trials) {
        return column.length == trials ? column : Arrays.copyOf(column, trials);
    }

    private static double error(double shown, double percent, double equation, double enhancement) {
        return shown - percent * (1 + equation + enhancement);
    }

    /** Relative humidity in % RH. */
    double reference(double dewPointCelsius, double airCelsius, double mirrorAboveChamberPascals) {
        return air.relativeHumidity(
                        new DewPoint(Temperature.ofCelsius(dewPointCelsius), deposit),
                        Pressure.ofPascals(chamberPascals + mirrorAboveChamberPascals),
                        Temperature.ofCelsius(airCelsius),
                        Pressure.ofPascals(chamberPascals))
                .percent();
    }
}
