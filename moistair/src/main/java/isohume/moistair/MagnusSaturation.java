// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * The Magnus form {@code e = A exp(a t / (b + t))}, t in degrees Celsius.
 *
 * <p>Source: WMO-No. 8, Annex 4.B. Simple, and a few parts in a thousand from the better formulas: a check by hand,
 * not a reference.
 */
final class MagnusSaturation implements Saturation {
    private static final Citation SOURCE = new Citation("WMO-No. 8, Guide to Instruments", "Annex 4.B");
    private static final String WATER = "saturation over water after WMO-No. 8";
    private static final String ICE = "saturation over ice after WMO-No. 8";

    private final Span vouchedFor;
    private final UncertaintyTable stated;
    private final double scale;
    private final double a;
    private final double b;
    private final double logScale;

    private MagnusSaturation(Span vouchedFor, UncertaintyTable stated, double scale, double a, double b) {
        this.vouchedFor = vouchedFor;
        this.stated = stated;
        this.scale = scale;
        this.a = a;
        this.b = b;
        this.logScale = StrictMath.log(scale);
    }

    static Saturation water() {
        UncertaintyTable stated = UncertaintyTable.of(WATER)
                .with(StatedUncertainty.Coverage.EXPANDED, Basis.READ, "0.6 % at 95 %", -45, 6e-3, 60, 6e-3);
        return new MagnusSaturation(Span.ofCelsius(WATER, -45, 60), stated, 611.2, 17.62, 243.12);
    }

    static Saturation ice() {
        UncertaintyTable stated = UncertaintyTable.of(ICE)
                .with(StatedUncertainty.Coverage.EXPANDED, Basis.READ, "1.0 % at 95 %", -65, 1e-2, 0.01, 1e-2);
        return new MagnusSaturation(Span.ofCelsius(ICE, -65, 0.01), stated, 611.2, 22.46, 272.62);
    }

    double scale() {
        return scale;
    }

    double a() {
        return a;
    }

    double b() {
        return b;
    }

    @Override
    public double logAt(double kelvin) {
        double t = Celsius.of(vouchedFor.require(kelvin));
        return logScale + a * t / (b + t);
    }

    @Override
    public double logSlopeAt(double kelvin) {
        double divisor = b + Celsius.of(vouchedFor.require(kelvin));
        return a * b / (divisor * divisor);
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
