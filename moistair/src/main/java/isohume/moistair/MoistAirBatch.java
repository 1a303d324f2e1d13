// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.Phase;
import isohume.quantity.Temperature;

/**
 * The same formulas over arrays, for charts and Monte Carlo. Nothing is allocated for
 * each value.
 *
 * <p>Temperatures are in degrees Celsius, pressures in Pa, relative humidities over water as fractions. A value that no
 * formula vouches for throws {@link OutsideRange} as it would alone; what was written to {@code out} before it stays.
 */
public final class MoistAirBatch {
    private final FormulaSet formulas;

    MoistAirBatch(FormulaSet formulas) {
        this.formulas = formulas;
    }

    /** {@link MoistAir#relativeHumidity} of each element. */
    public void relativeHumidity(
            double[] pointCelsius,
            double[] mirrorPascals,
            double[] airCelsius,
            double[] chamberPascals,
            Phase deposit,
            double[] out) {
        requireLength(out.length, pointCelsius, mirrorPascals, airCelsius, chamberPascals);
        HumidityBlocks blocks = formulas.blocks(out.length);
        for (int from = 0; from < out.length; from += SurfaceBlock.MOST) {
            int count = Math.min(SurfaceBlock.MOST, out.length - from);
            if (!blocks.reckon(pointCelsius, mirrorPascals, airCelsius, chamberPascals, deposit, out, from, count)) {
                oneByOne(pointCelsius, mirrorPascals, airCelsius, chamberPascals, deposit, out, from, count);
            }
        }
    }

    private void oneByOne(
            double[] point,
            double[] mirror,
            double[] air,
            double[] chamber,
            Phase deposit,
            double[] out,
            int from,
            int count) {
        for (int i = from; i < from + count; i++) {
            out[i] = formulas.relativeHumidity(kelvin(point[i]), mirror[i], deposit, kelvin(air[i]), chamber[i]);
        }
    }

    /** {@link MoistAir#dewPoint} of each element, in degrees Celsius. */
    public void dewPoint(
            double[] humidity,
            double[] airCelsius,
            double[] chamberPascals,
            double[] mirrorPascals,
            Phase deposit,
            double[] out) {
        requireLength(out.length, humidity, airCelsius, chamberPascals, mirrorPascals);
        for (int i = 0; i < out.length; i++) {
            double point =
                    formulas.dewPoint(humidity[i], kelvin(airCelsius[i]), chamberPascals[i], mirrorPascals[i], deposit);
            out[i] = Temperature.ofKelvin(point).celsius();
        }
    }

    /** {@link MoistAir#vapourPressure} of each element, in Pa. */
    public void vapourPressure(double[] pointCelsius, double[] totalPascals, Phase deposit, double[] out) {
        requireLength(out.length, pointCelsius, totalPascals);
        for (int i = 0; i < out.length; i++) {
            out[i] = formulas.vapourPressure(kelvin(pointCelsius[i]), totalPascals[i], deposit);
        }
    }

    private static double kelvin(double celsius) {
        return Temperature.ofCelsius(celsius).kelvin();
    }

    private static void requireLength(int length, double[]... columns) {
        for (double[] column : columns) {
            if (column.length != length) {
                throw new IllegalArgumentException(
                        "arrays of a batch must have one length, were " + length + " and " + column.length);
            }
        }
    }
}
