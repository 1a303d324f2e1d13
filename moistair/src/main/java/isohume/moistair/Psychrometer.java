// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.Phase;

/**
 * A ventilated thermometer with a wet bulb: {@code e = e_s(tw) f - A (1 + B tw) p (t - tw)}, tw in degrees Celsius.
 *
 * @param coefficient A in 1/K; it belongs to the instrument and its ventilation
 * @param perDegree B in 1/°C
 * @param bulb what covers the bulb; below 0 °C somebody has to look
 * @param source where the coefficient is printed
 * @param basis whether it was read or remembered
 */
public record Psychrometer(double coefficient, double perDegree, Phase bulb, String source, Basis basis) {
    public Psychrometer {
        if (!(coefficient > 0 && coefficient < 0.01 && Math.abs(perDegree) < 0.005)) {
            throw new IllegalArgumentException("psychrometer coefficient must be positive and below 0.01 1/K with a"
                    + " change below 0.005 1/°C, was " + coefficient + " and " + perDegree);
        }
    }

    /** Assmann's, water bulb: 6.53e-4 (1 + 0.000944 tw) 1/K, WMO-No. 8, Annex 4.B. */
    public static Psychrometer assmannWater() {
        return new Psychrometer(6.53e-4, 0.000944, Phase.WATER, "WMO-No. 8, Annex 4.B", Basis.READ);
    }

    /** Assmann's, ice bulb: 5.75e-4 1/K, WMO-No. 8, Annex 4.B, from memory. */
    public static Psychrometer assmannIce() {
        return new Psychrometer(5.75e-4, 0, Phase.ICE, "WMO-No. 8, Annex 4.B", Basis.MEMORY);
    }

    /** What the depression of the bulb takes from its saturation pressure, in Pa; temperatures in kelvin. */
    double depression(double air, double bulbKelvin, double total) {
        return coefficient * (1 + perDegree * Celsius.of(bulbKelvin)) * total * (air - bulbKelvin);
    }

    /** Its derivative to the temperature of the bulb, in Pa/K. */
    double depressionSlope(double air, double bulbKelvin, double total) {
        return coefficient * total * (perDegree * (air - bulbKelvin) - (1 + perDegree * Celsius.of(bulbKelvin)));
    }
}
