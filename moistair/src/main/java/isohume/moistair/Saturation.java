// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * Saturation vapour pressure of pure water substance over one phase, without air.
 *
 * <p>Temperatures are in kelvin on ITS-90. Each method throws {@link OutsideRange} beyond {@link #vouchedFor()}.
 */
interface Saturation {
    /** {@code ln(e/Pa)}. */
    double logAt(double kelvin);

    /** {@code ln(e/Pa)} of the first temperatures, all of them within {@link #vouchedFor()}; the same bits as one by one. */
    default void logAt(double[] kelvin, int count, double[] out) {
        for (int i = 0; i < count; i++) {
            out[i] = logAt(kelvin[i]);
        }
    }

    /** {@code d ln e / dT} in 1/K, differentiated by hand. */
    double logSlopeAt(double kelvin);

    /** What the source states about its error; {@link OutsideRange} where it states nothing. */
    StatedUncertainty uncertaintyAt(double celsius);

    Span vouchedFor();

    Citation source();
}
