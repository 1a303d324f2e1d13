// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.Phase;
import isohume.quantity.Temperature;
import java.util.List;

/**
 * The formulas of one formulation and what follows from them, in kelvin, pascals and fractions.
 *
 * <p>Water has up to two surfaces, because enhancement coefficients come as one set from 0 °C up and one for
 * supercooled water. The two sets differ by some millionths at 0 °C. A dew point that both give is taken from the
 * warmer set, and one that falls into the gap between them is 0 °C.
 */
final class FormulaSet {
    private static final double CELSIUS_ZERO = Temperature.ofCelsius(0).kelvin();
    private static final double TOLERANCE_KELVIN = 1e-9; // Newton's next step would be under 1e-15
    private static final int MOST_STEPS = 100;
    private static final double ROUNDING = 1e-12; // of the vapour pressure; an end of a range belongs to it
    private static final double USUAL_LOG_FACTOR = 0.004; // ln f near atmospheric pressure, for the start only

    private final Formulation formulation;
    private final Elementary math;
    private final Saturation water;
    private final Saturation ice;
    private final List<Surface> waterSurfaces; // from the warmest to the coldest
    private final List<Surface> iceSurfaces;

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
                .toList();
        this.iceSurfaces = List.of(new Surface("frost point", math, ice, overIce));
    }

    static FormulaSet of(Formulation formulation, Elementary math) {
        return switch (formulation) {
            case SONNTAG_1990 ->
                new FormulaSet(
                        formulation,
                        math,
                        LogPolynomialSaturation.sonntagWater(math),
                        LogPolynomialSaturation.sonntagIce(math),
                        List.of(
                                GreenspanEnhancement.greenspanWater(math),
                                GreenspanEnhancement.greenspanSupercooledWater(math)),
                        GreenspanEnhancement.greenspanIce(math));
            case HARDY_1998 ->
                new FormulaSet(
                        formulation,
                        math,
                        LogPolynomialSaturation.hardyWater(math),
                        LogPolynomialSaturation.hardyIce(math),
                        List.of(
                                GreenspanEnhancement.hardyWater(math),
                                GreenspanEnhancement.hardySupercooledWater(math)),
                        GreenspanEnhancement.hardyIce(math));
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

    private List<Surface> surfaces(Phase phase) {
        return switch (phase) {
            case WATER -> waterSurfaces;
            case ICE -> iceSurfaces;
        };
    }

    Surface surface(double kelvin, Phase phase) {
        List<Surface> surfaces = surfaces(phase);
        return kelvin >= CELSIUS_ZERO || surfaces.size() == 1 ? surfaces.get(0) : surfaces.get(1);
    }

    double logPressure(double kelvin, double p, Phase phase) {
        return surface(kelvin, phase).logPressure(kelvin, p);
    }

    double relativeHumidity(double pointKelvin, double mirror, Phase deposit, double airKelvin, double chamber) {
        double logRatio = logPressure(pointKelvin, mirror, deposit) - logPressure(airKelvin, chamber, Phase.WATER);
        return math.exp(logRatio) * chamber / mirror;
    }

    /** Dew or frost point in kelvin, from {@code ln} of the vapour pressure in Pa. */
    double dewPoint(double logVapour, double total, Phase deposit) {
        requireRoomFor(logVapour, total);
        double start = FirstGuess.kelvin(logVapour - USUAL_LOG_FACTOR, deposit);
        List<Surface> surfaces = surfaces(deposit);
        for (int i = 0; i < surfaces.size(); i++) {
            Span span = surfaces.get(i).span();
            Rising curve = surfaces.get(i).logPressureAt(total);
            double low = span.lowestKelvin();
            double high = span.highestKelvin();
            if (logVapour >= curve.at(low) - ROUNDING) {
                if (logVapour <= curve.at(high) + ROUNDING) {
                    return curve.whereIs(logVapour, low, high, start, TOLERANCE_KELVIN, MOST_STEPS);
                }
                if (i > 0) {
                    return high; // between the two sets
                }
                break;
            }
        }
        throw outsideRange(logVapour, total, deposit);
    }

    private void requireRoomFor(double logVapour, double total) {
        double vapour = math.exp(logVapour);
        if (!(vapour <= total)) {
            throw new OutsideRange("vapour pressure in air of this total pressure", vapour, 0, total, "Pa");
        }
    }

    private OutsideRange outsideRange(double logVapour, double total, Phase deposit) {
        List<Surface> surfaces = surfaces(deposit);
        Surface warmest = surfaces.get(0);
        Surface coldest = surfaces.get(surfaces.size() - 1);
        double lowest = coldest.span().lowestKelvin();
        double highest = warmest.span().highestKelvin();
        String what = warmest.span().what() + " between "
                + coldest.span().lowestCelsius() + " and " + warmest.span().highestCelsius()
                + " °C at a total pressure of " + total + " Pa; its vapour pressure";
        return new OutsideRange(
                what,
                math.exp(logVapour),
                math.exp(coldest.logPressureAt(total).at(lowest)),
                math.exp(warmest.logPressureAt(total).at(highest)),
                "Pa");
    }
}
