// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * Over ice Ih: {@code ln(e/pt) = (1/θ) Σ a[i] θ^b[i]}, {@code θ = T/Tt}.
 *
 * <p>Source: IAPWS R14-08(2011), sublimation pressure, eq. 6. Range: 50 K to 273.16 K. Printed check value: 8.94735 Pa
 * at 230 K. ITS-90.
 */
final class IapwsIceSaturation implements Saturation {
    static final double TRIPLE_KELVIN = 273.16;
    static final double TRIPLE_PASCALS = 611.657;
    static final double A1 = -0.212144006e2;
    static final double A2 = 0.273203819e2;
    static final double A3 = -0.610598130e1;
    static final double B1 = 0.333333333e-2;
    static final double B2 = 0.120666667e1;
    static final double B3 = 0.170333333e1;

    private static final Citation SOURCE = new Citation("IAPWS R14-08(2011)", "eq. 6");
    private static final Span VOUCHED_FOR = Span.ofCelsius("saturation over ice after IAPWS R14-08", -223.15, 0.01);
    private static final double LOG_TRIPLE = StrictMath.log(TRIPLE_PASCALS);
    private static final UncertaintyTable STATED = UncertaintyTable.of("saturation over ice after IAPWS R14-08")
            .with(
                    StatedUncertainty.Coverage.UNSTATED,
                    Basis.MEMORY,
                    "about 0.02 % near 0 °C, rising to about 0.6 % at 130 K; the line between is ours",
                    -143.15,
                    6e-3,
                    0.01,
                    2e-4);

    private final Elementary math;

    IapwsIceSaturation(Elementary math) {
        this.math = math;
    }

    @Override
    public double logAt(double kelvin) {
        double theta = VOUCHED_FOR.require(kelvin) / TRIPLE_KELVIN;
        double log = math.log(theta);
        double sum = A1 * math.exp(B1 * log) + A2 * math.exp(B2 * log) + A3 * math.exp(B3 * log);
        return LOG_TRIPLE + sum / theta;
    }

    @Override
    public double logSlopeAt(double kelvin) {
        double theta = VOUCHED_FOR.require(kelvin) / TRIPLE_KELVIN;
        double log = math.log(theta);
        double sum = A1 * (B1 - 1) * math.exp(B1 * log)
                + A2 * (B2 - 1) * math.exp(B2 * log)
                + A3 * (B3 - 1) * math.exp(B3 * log);
        return sum / (theta * kelvin);
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
