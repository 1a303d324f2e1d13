// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.Phase;
import java.util.List;

/**
 * The formulas of one formulation and what follows from them, in kelvin, pascals and fractions.
 *
 * <p>Water has up to two surfaces, because enhancement coefficients come as one set from 0 °C up and one for
 * supercooled water. The two sets differ by some millionths at 0 °C. A dew point that both give is taken from the
 * warmer set, and one that falls into the gap between them is 0 °C.
 */
final class FormulaSet {
    private static final double TOLERANCE_KELVIN =
            1e-10; // 2e-11 of the vapour pressure at most; Newton is then far closer
    private static final int MOST_STEPS = 100;
    private static final double ROUNDING = 1e-12; // of the vapour pressure; an end of a range belongs to it
    private static final double USUAL_LOG_FACTOR = 4e-8; // ln f for each Pa of total pressure, for the start only
    private static final double NEAR_AN_END = 0.01; // K; there, and where two sets meet, the ends are looked at first

    private final Formulation formulation;
    private final Elementary math;
    private final Saturation water;
    private final Saturation ice;
    private final Surface[] waterSurfaces; // from the warmest to the coldest
    private final Surface[] iceSurfaces;

    private FormulaSet(
            Formulation formulation,
            Elementary math,
            Saturation water,
            Saturation ice,
            List<Enhancement> overWater,
            Enhancement overIce) {
        this.formulation = formulation;
        this.math = math;
        this.water = water;
        this.ice = ice;
        this.waterSurfaces = overWater.stream()
                .map(set -> new Surface("dew point", math, water, set))
                .toArray(Surface[]::new);
        this.iceSurfaces = new Surface[] {new Surface("frost point", math, ice, overIce)};
    }

    static FormulaSet of(Formulation formulation, Elementary math) {
        return switch (formulation) {
            case SONNTAG_1990 ->
                new FormulaSet(
                        formulation,
                        math,
                        LogPolynomialSaturation.sonntagWater(),
                        LogPolynomialSaturation.sonntagIce(),
                        List.of(
                                GreenspanEnhancement.greenspanWater(math),
                                GreenspanEnhancement.greenspanSupercooledWater(math)),
                        GreenspanEnhancement.greenspanIce(math));
            case HARDY_1998 ->
                new FormulaSet(
                        formulation,
                        math,
                        LogPolynomialSaturation.hardyWater(),
                        LogPolynomialSaturation.hardyIce(),
                        List.of(
                                GreenspanEnhancement.hardyWater(math),
                                GreenspanEnhancement.hardySupercooledWater(math)),
                        GreenspanEnhancement.hardyIce(math));
            case HYLAND_WEXLER_1983 ->
                new FormulaSet(
                        formulation,
                        math,
                        LogPolynomialSaturation.hylandWexlerWater(),
                        LogPolynomialSaturation.hylandWexlerIce(),
                        List.of(GreenspanEnhancement.greenspanWater(math)),
                        GreenspanEnhancement.greenspanIce(math));
            case IAPWS ->
                new FormulaSet(
                        formulation,
                        math,
                        new IapwsWaterSaturation(),
                        new IapwsIceSaturation(math),
                        List.of(GreenspanEnhancement.greenspanWater(math)),
                        GreenspanEnhancement.greenspanIce(math));
            case WMO_MAGNUS ->
                new FormulaSet(
                        formulation,
                        math,
                        MagnusSaturation.water(),
                        MagnusSaturation.ice(),
                        List.of(WmoEnhancement.overWater(math)),
                        WmoEnhancement.overIce(math));
        };
    }

    Formulation formulation() {
        return formulation;
    }

    Saturation saturation(Phase phase) {
        return switch (phase) {
            case WATER -> water;
            case ICE -> ice;
        };
    }

    private Surface[] surfaces(Phase phase) {
        return switch (phase) {
            case WATER -> waterSurfaces;
            case ICE -> iceSurfaces;
        };
    }

    Surface surface(double kelvin, Phase phase) {
        Surface[] surfaces = surfaces(phase);
        return kelvin >= Celsius.ZERO || surfaces.length == 1 ? surfaces[0] : surfaces[1];
    }

    double logPressure(double kelvin, double p, Phase phase) {
        return surface(kelvin, phase).logPressure(kelvin, p);
    }

    double relativeHumidity(double pointKelvin, double mirror, Phase deposit, double airKelvin, double chamber) {
        Surface atMirror = surface(pointKelvin, deposit);
        Surface inChamber = surface(airKelvin, Phase.WATER);
        double logPoint = atMirror.logSaturation(pointKelvin);
        double logAir = inChamber.logSaturation(airKelvin);
        double pointE = math.exp(logPoint);
        double airE = math.exp(logAir);
        double logRatio = atMirror.logFactor(pointKelvin, logPoint, pointE, mirror)
                - inChamber.logFactor(airKelvin, logAir, airE, chamber);
        return humidity(pointE, mirror, airE, chamber, math.expNearZero(logRatio));
    }

    /** Relative humidity from saturation pressures at the mirror and in the chamber and the ratio of their factors. */
    static double humidity(double pointE, double mirror, double airE, double chamber, double factorRatio) {
        return pointE * chamber / (airE * mirror) * factorRatio;
    }

    /** Where batches of {@link #relativeHumidity} are reckoned. */
    HumidityBlocks blocks(int values) {
        return new HumidityBlocks(this, math, values);
    }

    double vapourPressure(double kelvin, double p, Phase phase) {
        return math.exp(logPressure(kelvin, p, phase));
    }

    /** Dew or frost point in kelvin of air of a relative humidity, as a fraction. */
    double dewPoint(double humidity, double airKelvin, double chamber, double mirror, Phase deposit) {
        double logVapour = math.log(humidity * mirror / chamber) + logPressure(airKelvin, chamber, Phase.WATER);
        return dewPoint(logVapour, mirror, deposit);
    }

    /** Dew or frost point in kelvin, from {@code ln} of the vapour pressure in Pa. */
    double dewPoint(double logVapour, double total, Phase deposit) {
        double vapour = math.exp(logVapour);
        if (!(vapour <= total)) {
            throw new OutsideRange("vapour pressure in air of this total pressure", vapour, 0, total, "Pa");
        }
        double start = FirstGuess.kelvin(logVapour - USUAL_LOG_FACTOR * total, deposit);
        return solve(new DewPointEquation(logVapour, total), deposit, start);
    }

    /** Temperature of a psychrometer's bulb in kelvin, from the vapour pressure in Pa. */
    double wetBulb(Psychrometer psychrometer, double airKelvin, double total, double vapour) {
        return solve(new WetBulbEquation(psychrometer, airKelvin, total, vapour), psychrometer.bulb(), airKelvin);
    }

    /** The answer on the warmest surface that has one. */
    private double solve(SurfaceEquation equation, Phase phase, double start) {
        Surface likely = surface(start, phase);
        double low = likely.span().lowestKelvin() + NEAR_AN_END;
        double high = likely.span().highestKelvin() - NEAR_AN_END;
        double found = equation.on(likely).near(equation.wanted(), low, high, start);
        return Double.isNaN(found) ? solveFromTheEnds(equation, phase, start) : found;
    }

    private double solveFromTheEnds(SurfaceEquation equation, Phase phase, double start) {
        double wanted = equation.wanted();
        Surface[] surfaces = surfaces(phase);
        for (int i = 0; i < surfaces.length; i++) {
            Rising curve = equation.on(surfaces[i]);
            double low = surfaces[i].span().lowestKelvin();
            double high = surfaces[i].span().highestKelvin();
            if (wanted >= justBelow(curve.at(low))) {
                if (-wanted >= justBelow(-curve.at(high))) {
                    return curve.whereIs(wanted, low, high, start, TOLERANCE_KELVIN, MOST_STEPS);
                }
                if (i > 0) {
                    return high; // in the gap between the two sets
                }
                break;
            }
        }
        throw equation.refusal(coldest(phase), warmest(phase));
    }

    private static double justBelow(double end) {
        return end - ROUNDING * Math.max(1, Math.abs(end));
    }

    Surface coldest(Phase phase) {
        Surface[] surfaces = surfaces(phase);
        return surfaces[surfaces.length - 1];
    }

    Surface warmest(Phase phase) {
        return surfaces(phase)[0];
    }
}
