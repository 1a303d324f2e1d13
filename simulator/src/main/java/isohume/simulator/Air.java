// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;

/** Moist air in the simulator's plain numbers: °C, Pa, and mole of vapour per mole of dry gas. */
final class Air {
    /** Molar gas constant in J/(mol K), exact in the SI of 2019. */
    static final double GAS_CONSTANT = 8.31446261815324;

    /** Molar mass of water in g/mol, with the digits that IAPWS R6-95(2018) prints. */
    static final double WATER_GRAMS = 18.015268;

    private static final MoistAir AIR = MoistAir.by(Formulation.HARDY_1998);
    private static final double METERED_CELSIUS = 23;
    private static final double TOLERANCE_KELVIN = 1e-9;
    private static final int MOST_STEPS = 60;

    private Air() {}

    /** Vapour pressure of saturated air over liquid water. */
    static double saturation(double celsius, double total) {
        return vapour(celsius, total, Phase.WATER);
    }

    /** Vapour pressure of air that is saturated over a phase. */
    static double vapour(double celsius, double total, Phase phase) {
        return AIR.vapourPressure(new DewPoint(Temperature.ofCelsius(celsius), phase), Pressure.ofPascals(total))
                .pascals();
    }

    /**
     * Dew or frost point in °C, from a guess nearby. The slope is that of the Magnus formula (WMO-No. 8, 2018, annex 4.B),
     * which only sets how fast the guess becomes the root of Hardy's.
     */
    static double point(double vapour, double total, Phase phase, double guess) {
        double slope = phase == Phase.ICE ? 22.46 * 272.62 : 17.62 * 243.12;
        double pole = phase == Phase.ICE ? 272.62 : 243.12;
        double celsius = guess;
        for (int i = 0; i < MOST_STEPS; i++) {
            double missing = StrictMath.log(vapour / vapour(celsius, total, phase));
            double step = missing * (pole + celsius) * (pole + celsius) / slope;
            celsius += step;
            if (Math.abs(step) < TOLERANCE_KELVIN) {
                return celsius;
            }
        }
        throw new IllegalStateException("no dew point found for " + vapour + " Pa near " + guess + " °C");
    }

    /** Relative humidity over water in %. */
    static double relativeHumidity(double vapour, double celsius, double total) {
        return 100 * vapour / saturation(celsius, total);
    }

    static double ratio(double vapour, double total) {
        return vapour / (total - vapour);
    }

    /** Moles in a volume of gas. */
    static double moles(double pascals, double litres, double celsius) {
        return pascals * litres * 1e-3 / (GAS_CONSTANT * kelvin(celsius));
    }

    /** Moles per second of dry gas in a flow that is metered in litres per minute at 23 °C and 1013.25 hPa. */
    static double flow(double litresPerMinute) {
        return moles(Pressure.STANDARD.pascals(), litresPerMinute / 60, METERED_CELSIUS);
    }

    static double kelvin(double celsius) {
        return Temperature.ofCelsius(celsius).kelvin();
    }
}
