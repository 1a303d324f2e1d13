// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * Over liquid water: {@code ln(e/pc) = (Tc/T) Σ a[i] τ^x[i]}, {@code τ = 1 - T/Tc}, exponents 1, 1.5, 3, 3.5, 4, 7.5.
 *
 * <p>Source: IAPWS SR1-86(1992), eq. 1 (Wagner and Pruss 1993). Range: triple point to critical point; there is no
 * IAPWS equation for supercooled water here. Printed check values: 611.657 Pa at 273.16 K, 101 325 Pa at 373.1243 K.
 * ITS-90.
 */
final class IapwsWaterSaturation implements Saturation {
    static final double CRITICAL_KELVIN = 647.096;
    static final double CRITICAL_PASCALS = 22.064e6;
    static final double A1 = -7.85951783;
    static final double A2 = 1.84408259;
    static final double A3 = -11.7866497;
    static final double A4 = 22.6807411;
    static final double A5 = -15.9618719;
    static final double A6 = 1.80122502;

    private static final Citation SOURCE = new Citation("IAPWS SR1-86(1992)", "eq. 1");
    private static final Span VOUCHED_FOR = Span.ofCelsius("saturation over water after IAPWS SR1-86", 0.01, 373.946);
    private static final double LOG_CRITICAL = StrictMath.log(CRITICAL_PASCALS);
    private static final UncertaintyTable STATED = UncertaintyTable.of("saturation over water after IAPWS SR1-86")
            .with(
                    StatedUncertainty.Coverage.EXPANDED,
                    Basis.MEMORY,
                    "0.025 % (k = 2), the figure of IAPWS-95, of which this equation is within 75 ppm",
                    0.01,
                    2.5e-4,
                    373.946,
                    2.5e-4);

    @Override
    public double logAt(double kelvin) {
        double t = VOUCHED_FOR.require(kelvin);
        double tau = Math.max(0, 1 - t / CRITICAL_KELVIN); // not below zero by rounding at the critical point
        return LOG_CRITICAL + CRITICAL_KELVIN / t * sum(tau);
    }

    private static double sum(double tau) {
        double root = Math.sqrt(tau); // correctly rounded by IEEE 754, so the same everywhere
        double cube = tau * tau * tau;
        return A1 * tau
                + A2 * tau * root
                + A3 * cube
                + A4 * cube * root
                + A5 * cube * tau
                + A6 * cube * cube * tau * root;
    }

    @Override
    public double logSlopeAt(double kelvin) {
        double t = VOUCHED_FOR.require(kelvin);
        double tau = Math.max(0, 1 - t / CRITICAL_KELVIN);
        double root = Math.sqrt(tau);
        double square = tau * tau;
        double slope = A1
                + 1.5 * A2 * root
                + 3 * A3 * square
                + 3.5 * A4 * square * root
                + 4 * A5 * square * tau
                + 7.5 * A6 * square * square * square * root;
        return -(CRITICAL_KELVIN / t * sum(tau) + slope) / t;
    }

    @Override
    public StatedUncertainty uncertaintyAt(double celsius) {
        return STATED.at(celsius);
    }

    @Override
    public Span vouchedFor() {
        return VOUCHED_FOR;
    }

    @Override
    public Citation source() {
        return SOURCE;
    }
}
