// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * The form that Wexler introduced and Sonntag, Hyland and Hardy kept: {@code ln(e/Pa) = Σ c[i] T^(i-2) + cLn ln T}, T in kelvin.
 *
 * <p>{@code c} holds the coefficients of T^-2, T^-1, T^0 … in rising order, with the digits of the source.
 */
final class LogPolynomialSaturation implements Saturation {
    private static final String WATER = "saturation over water";
    private static final String ICE = "saturation over ice";
    private static final String HARDY = "Hardy 1998, 3rd Int. Symp. on Humidity and Moisture, 214";
    private static final String HYLAND_WEXLER = "Hyland and Wexler 1983, ASHRAE Trans. 89(2A), 500";
    private static final String SONNTAG = "Sonntag 1990, Z. Meteorol. 70, 340";

    private final Citation source;
    private final Span vouchedFor;
    private final Sextic c;
    private final Sextic slope;
    private final double cLn;
    private final UncertaintyTable stated;

    private LogPolynomialSaturation(Citation source, Span vouchedFor, Sextic c, double cLn, UncertaintyTable stated) {
        this.source = source;
        this.vouchedFor = vouchedFor;
        this.c = c;
        this.slope = new Sextic(-2 * c.c0(), -c.c1(), 0, c.c3(), 2 * c.c4(), 3 * c.c5(), 4 * c.c6());
        this.cLn = cLn;
        this.stated = stated;
    }

    /** ITS-90. Sonntag prints one set for water, supercooled included. */
    static Saturation sonntagWater() {
        return new LogPolynomialSaturation(
                new Citation(SONNTAG, "water"),
                Span.ofCelsius(WATER + " after Sonntag 1990", -100, 100),
                new Sextic(0, -6096.9385, 21.2409642, -2.711193e-2, 1.673952e-5, 0, 0),
                2.433502,
                StatedBySource.sonntagWater());
    }

    /** ITS-90. */
    static Saturation sonntagIce() {
        return new LogPolynomialSaturation(
                new Citation(SONNTAG, "ice"),
                Span.ofCelsius(ICE + " after Sonntag 1990", -100, 0.01),
                new Sextic(0, -6024.5282, 29.32707, 1.0613868e-2, -1.3198825e-5, 0, 0),
                -0.49382577,
                StatedBySource.sonntagIce());
    }

    /**
     * ITS-90. The equation is fitted from 0 to 100 °C; Hardy's enhancement set for water from -50 °C goes with its
     * extension to supercooled water.
     */
    static Saturation hardyWater() {
        return new LogPolynomialSaturation(
                new Citation(HARDY, "eq. 2"),
                Span.ofCelsius(WATER + " after Hardy 1998", -50, 100),
                new Sextic(
                        -2.8365744e3,
                        -6.028076559e3,
                        1.954263612e1,
                        -2.737830188e-2,
                        1.6261698e-5,
                        7.0229056e-10,
                        -1.8680009e-13),
                2.7150305,
                StatedBySource.hardyWater());
    }

    /** ITS-90. */
    static Saturation hardyIce() {
        return new LogPolynomialSaturation(
                new Citation(HARDY, "ice"),
                Span.ofCelsius(ICE + " after Hardy 1998", -100, 0.01),
                new Sextic(0, -5.8666426e3, 2.232870244e1, 1.39387003e-2, -3.4262402e-5, 2.7040955e-8, 0),
                6.7063522e-1,
                StatedBySource.hardyIce());
    }

    /** Thermodynamic temperature, taken as ITS-90: the values agree with IAPWS without a change of scale. */
    static Saturation hylandWexlerWater() {
        return new LogPolynomialSaturation(
                new Citation(HYLAND_WEXLER, "water"),
                Span.ofCelsius(WATER + " after Hyland and Wexler 1983", 0, 200),
                new Sextic(0, -0.58002206e4, 0.13914993e1, -0.48640239e-1, 0.41764768e-4, -0.14452093e-7, 0),
                0.65459673e1,
                StatedBySource.hylandWexlerWater());
    }

    /** Thermodynamic temperature, taken as ITS-90. */
    static Saturation hylandWexlerIce() {
        return new LogPolynomialSaturation(
                new Citation(HYLAND_WEXLER, "ice"),
                Span.ofCelsius(ICE + " after Hyland and Wexler 1983", -100, 0.01),
                new Sextic(
                        0, -0.56745359e4, 0.63925247e1, -0.96778430e-2, 0.62215701e-6, 0.20747825e-8, -0.94840240e-12),
                0.41635019e1,
                StatedBySource.hylandWexlerIce());
    }

    @Override
    public double logAt(double kelvin) {
        vouchedFor.require(kelvin);
        return at(kelvin, LogKelvin.of(kelvin));
    }

    @Override
    public void logAt(double[] kelvin, int count, double[] out) {
        LogKelvin.of(kelvin, count, out);
        for (int i = 0; i < count; i++) {
            out[i] = at(kelvin[i], out[i]);
        }
    }

    private double at(double kelvin, double logKelvin) {
        return c.at(kelvin) / (kelvin * kelvin) + cLn * logKelvin;
    }

    @Override
    public double logSlopeAt(double kelvin) {
        vouchedFor.require(kelvin);
        return (slope.at(kelvin) / (kelvin * kelvin) + cLn) / kelvin;
    }

    @Override
    public StatedUncertainty uncertaintyAt(double celsius) {
        return stated.at(celsius);
    }

    /** The coefficient of {@code T^power}, for comparison with print. */
    double coefficient(int power) {
        return c.coefficient(power + 2);
    }

    /** The coefficient of {@code ln T}. */
    double logCoefficient() {
        return cLn;
    }

    @Override
    public Span vouchedFor() {
        return vouchedFor;
    }

    @Override
    public Citation source() {
        return source;
    }
}
