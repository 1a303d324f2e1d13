// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * How relative humidity, as a fraction, answers to what it is computed from; differentiated by hand.
 *
 * @param perPoint to dew or frost point, 1/K
 * @param perAirTemperature to air temperature, 1/K
 * @param perMirrorPressure to the pressure at the mirror, 1/Pa
 * @param perChamberPressure to the pressure in the chamber, 1/Pa
 */
public record HumiditySlopes(
        double perPoint, double perAirTemperature, double perMirrorPressure, double perChamberPressure) {}
