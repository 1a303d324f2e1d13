// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * The factor by which air at a total pressure raises the saturation vapour pressure.
 *
 * <p>Temperatures are in kelvin, {@code e} is the saturation pressure without air, {@code logE} its logarithm, and
 * {@code p} the total pressure, both in Pa. Each method throws {@link OutsideRange} beyond {@link #vouchedFor()}.
 */
sealed interface Enhancement permits GreenspanEnhancement, WmoEnhancement {
    /** {@code ln f}. */
    double logAt(double kelvin, double logE, double e, double p);

    /**
     * {@code ln f} of a block whose temperatures are all within {@link #vouchedFor()}; the same bits as one by one.
     *
     * @param p pressures of which the block begins at {@code from}
     * @return false, with anything in {@code out}, if a pressure is none that this holds for
     */
    boolean logAt(double[] kelvin, double[] logE, double[] e, double[] p, int from, int count, double[] out);

    /** Newton's step in K from a temperature towards where {@code ln(e f)} is wanted; arguments as in the slope. */
    default double stepTo(double wanted, double kelvin, double logE, double e, double slopeOfE, double p) {
        double miss = wanted - logE - logAt(kelvin, logE, e, p);
        return miss / (slopeOfE + logSlopeAt(kelvin, logE, e, slopeOfE, p));
    }

    /** {@code d ln f / dT} in 1/K at constant {@code p}; {@code slopeOfE} is {@code d ln e / dT}. */
    double logSlopeAt(double kelvin, double logE, double e, double slopeOfE, double p);

    /** {@code d ln f / dp} in 1/Pa at constant temperature. */
    double logPressureSlopeAt(double kelvin, double logE, double e, double p);

    /** What the factor may be wrong by between 70 and 110 kPa; {@link OutsideRange} where nothing is known. */
    StatedUncertainty uncertaintyAt(double celsius);

    Span vouchedFor();

    Citation source();
}
