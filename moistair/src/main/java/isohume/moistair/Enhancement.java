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

    /** {@code d ln f / dT} in 1/K at constant {@code p}; {@code slopeOfE} is {@code d ln e / dT}. */
    double logSlopeAt(double kelvin, double logE, double e, double slopeOfE, double p);

    /** {@code d ln f / dp} in 1/Pa at constant temperature. */
    double logPressureSlopeAt(double kelvin, double logE, double e, double p);

    /** What the factor may be wrong by between 70 and 110 kPa; {@link OutsideRange} where nothing is known. */
    StatedUncertainty uncertaintyAt(double celsius);

    Span vouchedFor();

    Citation source();
}
