// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import java.time.LocalDate;
import java.util.List;

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
    public Characterisation {
        temperatures = List.copyOf(temperatures);
        if (temperatures.isEmpty()) {
            throw new IllegalArgumentException("characterisation " + number + " has no temperatures");
        }
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
            double celsius, double uniformity, double radiation, double loading, double stem, double selfHeating) {}
}
