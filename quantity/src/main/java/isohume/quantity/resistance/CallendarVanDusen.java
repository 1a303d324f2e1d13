// SPDX-License-Identifier: Apache-2.0
package isohume.quantity.resistance;

import isohume.quantity.Temperature;

/**
 * A thermometer by the Callendar–Van Dusen equation: R = R0 (1 + A t + B t² + C (t − 100 °C) t³), the last term below
 * 0 °C only, t in °C.
 *
 * <p>Source: IEC 60751:2022, 4.2, whose coefficients {@link #iec60751} has; individual ones come with a calibration.
 * Range: −200 °C to 850 °C. Printed check value: 138.51 Ω at 100 °C for 100 Ω at 0 °C.
 *
 * @param r0 resistance at 0 °C, in ohms
 * @param a in 1/°C
 * @param b in 1/°C²
 * @param c in 1/°C⁴
 */
public record CallendarVanDusen(double r0, double a, double b, double c) implements ResistanceThermometer {
    private static final double LOWEST = -200;
    private static final double HIGHEST = 850;
    private static final int MOST_STEPS = 50;

    /** Refuses coefficients that are no thermometer's. */
    public CallendarVanDusen {
        if (!(r0 > 0) || !(a > 0) || !Double.isFinite(r0 + a + b + c) || !(slope(HIGHEST, a, b, c) > 0)) {
            throw new IllegalArgumentException(
                    "a platinum thermometer has R0 > 0, A > 0 and rises up to 850 °C; given were R0 " + r0 + " Ω, A "
                            + a + ", B " + b + ", C " + c);
        }
    }

    /** The standard's thermometer with this resistance at 0 °C, in ohms. */
    public static CallendarVanDusen iec60751(double r0) {
        return new CallendarVanDusen(r0, 3.9083e-3, -5.775e-7, -4.183e-12);
    }

    @Override
    public double ohms(Temperature temperature) {
        double t = temperature.celsius();
        if (!(t >= LOWEST && t <= HIGHEST)) {
            throw new IllegalArgumentException(
                    "the equation goes from " + LOWEST + " to " + HIGHEST + " °C; asked was " + t + " °C");
        }
        return r0 * ratio(t);
    }

    @Override
    public Temperature at(double ohms) {
        double ratio = ohms / r0;
        if (!(ratio >= ratio(LOWEST) && ratio <= ratio(HIGHEST))) {
            throw new IllegalArgumentException("from " + LOWEST + " to " + HIGHEST + " °C it has " + r0 * ratio(LOWEST)
                    + " to " + r0 * ratio(HIGHEST) + " Ω; given were " + ohms + " Ω");
        }
        double t = 2 * (ratio - 1) / (a + Math.sqrt(a * a + 4 * b * (ratio - 1)));
        for (int step = 0; step < MOST_STEPS; step++) {
            double change = (ratio - ratio(t)) / slope(t, a, b, c);
            t += change;
            if (Math.abs(change) < 1e-10) {
                return Temperature.ofCelsius(t);
            }
        }
        throw new IllegalArgumentException("no temperature was found for " + ohms + " Ω");
    }

    private double ratio(double t) {
        return 1 + a * t + b * t * t + (t < 0 ? c * (t - 100) * t * t * t : 0);
    }

    private static double slope(double t, double a, double b, double c) {
        return a + 2 * b * t + (t < 0 ? c * (4 * t - 300) * t * t : 0);
    }
}
