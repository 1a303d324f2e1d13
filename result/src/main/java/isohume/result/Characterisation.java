// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/**
 * How the air at the instruments differs from the air at the references: the outcome of a study of the chamber. All
 * figures are half-widths.
 *
 * @param temperatures in rising order, at least one; figures between two are interpolated
 * @param condensate contamination, Raoult, Kelvin and layer control of the mirror, K
 * @param line sorption or a leak in the sample line, K of dew point
 * @param dryLine the same below 20 % RH, K of dew point
 * @param pressureDifference what is not known of the pressure between chamber and mirror, Pa
 */
public record Characterisation(
        String number,
        LocalDate made,
        LocalDate due,
        String method,
        List<AtTemperature> temperatures,
        double condensate,
        double line,
        double dryLine,
        double pressureDifference) {
    private static final double SLACK_KELVIN = 1; // a chamber does not end up exactly where it was studied

    public Characterisation {
        temperatures = List.copyOf(temperatures);
        if (temperatures.isEmpty()) {
            throw new IllegalArgumentException("characterisation " + number + " has no temperatures");
        }
    }

    /**
     * The figures at a chamber temperature.
     *
     * @throws IllegalArgumentException beyond the temperatures that were studied
     */
    AtTemperature at(double celsius) {
        AtTemperature below = temperatures.getFirst();
        for (AtTemperature above : temperatures) {
            if (celsius <= above.celsius() && celsius >= below.celsius() - SLACK_KELVIN) {
                return below.towards(above, celsius);
            }
            below = above;
        }
        if (celsius >= below.celsius() && celsius <= below.celsius() + SLACK_KELVIN) {
            return below;
        }
        throw new IllegalArgumentException(String.format(
                Locale.ROOT,
                "characterisation %s covers %.1f to %.1f °C, not %.1f °C",
                number,
                temperatures.getFirst().celsius(),
                temperatures.getLast().celsius(),
                celsius));
    }

    /**
     * Figures at one chamber temperature, K.
     *
     * @param uniformity between the thermometer and any position
     * @param radiation walls seen by the sensor
     * @param loading heat of the instruments on the air around them
     * @param stem heat along a stem or through a port; for temperature only
     * @param selfHeating of the thermometer, after correction
     */
    public record AtTemperature(
            double celsius, double uniformity, double radiation, double loading, double stem, double selfHeating) {
        private AtTemperature towards(AtTemperature other, double at) {
            double share = other.celsius > celsius ? Math.max(0, (at - celsius) / (other.celsius - celsius)) : 0;
            return new AtTemperature(
                    at,
                    uniformity + share * (other.uniformity - uniformity),
                    radiation + share * (other.radiation - radiation),
                    loading + share * (other.loading - loading),
                    stem + share * (other.stem - stem),
                    selfHeating + share * (other.selfHeating - selfHeating));
        }
    }
}
