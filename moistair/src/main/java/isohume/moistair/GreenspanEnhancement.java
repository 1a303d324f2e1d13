// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * The form of Greenspan: {@code ln f = α (1 - e/p) + β (p/e - 1)} with cubic {@code α(X)} and {@code ln β(X)}.
 *
 * <p>Sources: Greenspan 1976, J. Res. NBS 80A, 41, with X in degrees Celsius; Hardy 1998, 3rd Int. Symp. on Humidity
 * and Moisture, 214, who prints the same sets expanded in kelvin. Greenspan's temperatures are IPTS-68; the factor
 * changes by less than 1e-6 with the scale. Pressures from 10 kPa to 2 MPa, from
 * memory. Each set ends at 0 °C; the ice set is also used for
 * the hundredth of a kelvin up to the triple point.
 */
final class GreenspanEnhancement implements Enhancement {
    private static final double LOWEST_PASCALS = 1e4;
    private static final double HIGHEST_PASCALS = 2e6;
    private static final Citation GREENSPAN = new Citation("Greenspan 1976, J. Res. NBS 80A, 41", "");
    private static final Citation HARDY =
            new Citation("Hardy 1998, 3rd Int. Symp. on Humidity and Moisture, 214", "enhancement factor");

    private final Elementary math;
    private final Citation source;
    private final Span vouchedFor;
    private final double origin; // X is zero at this many kelvin
    private final Cubic alpha;
    private final Cubic logBeta;
    private final UncertaintyTable stated;

    private GreenspanEnhancement(
            Elementary math,
            Citation source,
            Span vouchedFor,
            double origin,
            Cubic alpha,
            Cubic logBeta,
            UncertaintyTable stated) {
        this.math = math;
        this.source = source;
        this.vouchedFor = vouchedFor;
        this.origin = origin;
        this.alpha = alpha;
        this.logBeta = logBeta;
        this.stated = stated;
    }

    static Enhancement greenspanWater(Elementary math) {
        return new GreenspanEnhancement(
                math,
                GREENSPAN,
                water(),
                Celsius.ZERO,
                new Cubic(3.53624e-4, 2.9328363e-5, 2.6168979e-7, 8.5813609e-9),
                new Cubic(-1.07588e1, 6.3268134e-2, -2.5368934e-4, 6.3405286e-7),
                RealGas.greenspanOverWater());
    }

    static Enhancement greenspanSupercooledWater(Elementary math) {
        return new GreenspanEnhancement(
                math,
                GREENSPAN,
                Span.ofCelsius("enhancement factor over supercooled water", -50, 0),
                Celsius.ZERO,
                new Cubic(3.62183e-4, 2.6061244e-5, 3.8667770e-7, 3.8268958e-9),
                new Cubic(-1.07604e1, 6.3987441e-2, -2.6351566e-4, 1.6725084e-6),
                RealGas.greenspanOverSupercooledWater());
    }

    static Enhancement greenspanIce(Elementary math) {
        return new GreenspanEnhancement(
                math,
                GREENSPAN,
                ice(),
                Celsius.ZERO,
                new Cubic(3.64449e-4, 2.9367585e-5, 4.8874766e-7, 4.3669918e-9),
                new Cubic(-1.07271e1, 7.6215115e-2, -1.7490155e-4, 2.4668279e-6),
                RealGas.greenspanOverIce());
    }

    static Enhancement hardyWater(Elementary math) {
        return new GreenspanEnhancement(
                math,
                HARDY,
                water(),
                0,
                new Cubic(-1.6302041e-1, 1.8071570e-3, -6.7703064e-6, 8.5813609e-9),
                new Cubic(-5.9890467e1, 3.4378043e-1, -7.7326396e-4, 6.3405286e-7),
                RealGas.greenspanOverWater());
    }

    static Enhancement hardySupercooledWater(Elementary math) {
        return new GreenspanEnhancement(
                math,
                HARDY,
                Span.ofCelsius("enhancement factor over supercooled water", -50, 0),
                0,
                new Cubic(-5.5898101e-2, 6.7140389e-4, -2.7492721e-6, 3.8268958e-9),
                new Cubic(-8.1985393e1, 5.8230823e-1, -1.6340527e-3, 1.6725084e-6),
                RealGas.greenspanOverSupercooledWater());
    }

    /** The set for the whole range of ice; Hardy's pair of narrower sets is not mixed with it. */
    static Enhancement hardyIce(Elementary math) {
        return new GreenspanEnhancement(
                math,
                HARDY,
                ice(),
                0,
                new Cubic(-6.0190570e-2, 7.3984060e-4, -3.0897838e-6, 4.3669918e-9),
                new Cubic(-9.4868712e1, 7.2392075e-1, -2.1963437e-3, 2.4668279e-6),
                RealGas.greenspanOverIce());
    }

    private static Span water() {
        return Span.ofCelsius("enhancement factor over water", 0, 100);
    }

    private static Span ice() {
        return Span.ofCelsius("enhancement factor over ice", -100, 0.01);
    }

    // β/e is had as exp(ln β - ln e), so that nothing waits for a division by e

    @Override
    public double logAt(double kelvin, double logE, double e, double p) {
        double x = require(kelvin, p);
        return logOf(x, e, p, math.exp(logBeta.at(x) - logE));
    }

    @Override
    public boolean logAt(double[] kelvin, double[] logE, double[] e, double[] p, int from, int count, double[] out) {
        for (int i = 0; i < count; i++) {
            if (!holdsFor(p[from + i])) {
                return false;
            }
        }
        for (int i = 0; i < count; i++) {
            out[i] = logBeta.at(kelvin[i] - origin) - logE[i];
        }
        math.exp(out, count);
        for (int i = 0; i < count; i++) {
            out[i] = logOf(kelvin[i] - origin, e[i], p[from + i], out[i]);
        }
        return true;
    }

    private double logOf(double x, double e, double p, double betaPerE) {
        return alpha.at(x) * (1 - e / p) + betaPerE * (p - e);
    }

    @Override
    public double stepTo(double wanted, double kelvin, double logE, double e, double slopeOfE, double p) {
        double x = require(kelvin, p);
        double betaPerE = math.exp(logBeta.at(x) - logE);
        double miss = wanted - logE - logOf(x, e, p, betaPerE);
        return miss / (slopeOfE + slopeOf(x, e, slopeOfE, p, betaPerE));
    }

    @Override
    public double logSlopeAt(double kelvin, double logE, double e, double slopeOfE, double p) {
        double x = require(kelvin, p);
        return slopeOf(x, e, slopeOfE, p, math.exp(logBeta.at(x) - logE));
    }

    private double slopeOf(double x, double e, double slopeOfE, double p, double betaPerE) {
        return alpha.slopeAt(x) * (1 - e / p)
                - alpha.at(x) * (e / p) * slopeOfE
                + betaPerE * (logBeta.slopeAt(x) * (p - e) - p * slopeOfE);
    }

    @Override
    public double logPressureSlopeAt(double kelvin, double logE, double e, double p) {
        double x = require(kelvin, p);
        return alpha.at(x) * (e / p) / p + math.exp(logBeta.at(x) - logE);
    }

    private double require(double kelvin, double p) {
        if (!holdsFor(p)) {
            throw new OutsideRange("enhancement factor at a total pressure", p, LOWEST_PASCALS, HIGHEST_PASCALS, "Pa");
        }
        return vouchedFor.require(kelvin) - origin;
    }

    private static boolean holdsFor(double p) {
        return p >= LOWEST_PASCALS && p <= HIGHEST_PASCALS;
    }

    @Override
    public StatedUncertainty uncertaintyAt(double celsius) {
        return stated.at(celsius);
    }

    Cubic alpha() {
        return alpha;
    }

    Cubic logBeta() {
        return logBeta;
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
