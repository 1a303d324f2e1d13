// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.Phase;

/** {@link FormulaSet#relativeHumidity} block by block, to the same bits. For one thread. */
final class HumidityBlocks {
    private final FormulaSet formulas;
    private final Elementary math;
    private final SurfaceBlock point;
    private final SurfaceBlock air;

    HumidityBlocks(FormulaSet formulas, Elementary math, int values) {
        int size = Math.min(values, SurfaceBlock.MOST);
        this.formulas = formulas;
        this.math = math;
        this.point = new SurfaceBlock(size);
        this.air = new SurfaceBlock(size);
    }

    /**
     * Reckons the block that begins at {@code from}; arguments as in {@link MoistAirBatch#relativeHumidity}.
     *
     * @return false, with {@code out} untouched, if its values must be taken one by one: they lie on several surfaces, or
     *     one of them would be refused
     */
    boolean reckon(
            double[] pointCelsius,
            double[] mirror,
            double[] airCelsius,
            double[] chamber,
            Phase deposit,
            double[] out,
            int from,
            int count) {
        point.take(pointCelsius, from, count);
        air.take(airCelsius, from, count);
        if (!formulas.surface(point.kelvin[0], deposit).reckon(point, mirror, from, count)
                || !formulas.surface(air.kelvin[0], Phase.WATER).reckon(air, chamber, from, count)) {
            return false;
        }
        double[] ratio = point.logFactor;
        for (int i = 0; i < count; i++) {
            ratio[i] -= air.logFactor[i];
        }
        math.expNearZero(ratio, count);
        for (int i = 0; i < count; i++) {
            out[from + i] = FormulaSet.humidity(point.e[i], mirror[from + i], air.e[i], chamber[from + i], ratio[i]);
        }
        return true;
    }
}
