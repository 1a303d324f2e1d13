// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * {@code f = f0 + f1 p + f2 / p}, p in hPa, over water and ice alike and at every temperature.
 *
 * <p>Source: WMO-No. 8, Annex 4.B. It belongs to the Magnus form there. It is a meteorological approximation: over
 * 70..110 kPa it is up to 0.12 % from real-gas models over water, and 0.27 % at -60 °C over ice. It is refused above 110
 * kPa, where no weather is.
 */
final class WmoEnhancement implements Enhancement {
    static final double F0 = 1.0016;
    static final double F1 = 3.15e-6;
    static final double F2 = -0.074;

    private static final double LOWEST_PASCALS = 1e4; // as Greenspan's; below 4.3 kPa the form falls under 1
    private static final double HIGHEST_PASCALS = 110_000;
    private static final double PASCALS_PER_HECTOPASCAL = 100;
    private static final Citation SOURCE = new Citation("WMO-No. 8, Guide to Instruments", "Annex 4.B");

    private final Elementary math;
    private final Span vouchedFor;
    private final UncertaintyTable stated;

    private WmoEnhancement(Elementary math, Span vouchedFor, UncertaintyTable stated) {
        this.math = math;
        this.vouchedFor = vouchedFor;
        this.stated = stated;
    }

    static Enhancement overWater(Elementary math) {
        Span span = Span.ofCelsius("enhancement factor after WMO-No. 8", -45, 60);
        return new WmoEnhancement(math, span, RealGas.wmoOverWater());
    }

    static Enhancement overIce(Elementary math) {
        Span span = Span.ofCelsius("enhancement factor after WMO-No. 8", -65, 0.01);
        return new WmoEnhancement(math, span, RealGas.wmoOverIce());
    }

    @Override
    public double logAt(double kelvin, double logE, double e, double p) {
        vouchedFor.require(kelvin);
        if (!holdsFor(p)) {
            throw new OutsideRange(
                    "enhancement factor after WMO-No. 8 at a total pressure", p, LOWEST_PASCALS, HIGHEST_PASCALS, "Pa");
        }
        double hectopascals = p / PASCALS_PER_HECTOPASCAL;
        return math.log(F0 + F1 * hectopascals + F2 / hectopascals);
    }

    @Override
    public boolean logAt(double[] kelvin, double[] logE, double[] e, double[] p, int from, int count, double[] out) {
        for (int i = 0; i < count; i++) {
            if (!holdsFor(p[from + i])) {
                return false;
            }
            out[i] = logAt(kelvin[i], logE[i], e[i], p[from + i]);
        }
        return true;
    }

    private static boolean holdsFor(double p) {
        return p >= LOWEST_PASCALS && p <= HIGHEST_PASCALS;
    }

    @Override
    public double logSlopeAt(double kelvin, double logE, double e, double slopeOfE, double p) {
        vouchedFor.require(kelvin);
        return 0;
    }

    @Override
    public double logPressureSlopeAt(double kelvin, double logE, double e, double p) {
        double f = math.exp(logAt(kelvin, logE, e, p));
        double hectopascals = p / PASCALS_PER_HECTOPASCAL;
        return (F1 - F2 / (hectopascals * hectopascals)) / PASCALS_PER_HECTOPASCAL / f;
    }

    @Override
    public StatedUncertainty uncertaintyAt(double celsius) {
        return stated.at(celsius);
    }

    @Override
    public Span vouchedFor() {
        return vouchedFor;
    }

    @Override
    public Citation source() {
        return SOURCE;
    }
}
