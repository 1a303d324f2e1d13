// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * How the temperature channel of an instrument under test answers.
 *
 * @param resolution last digit, K
 * @param offset error at 23 °C, K
 * @param gain error per kelvin away from 23 °C, K/K
 * @param selfHeating excess of the sensor over the air, K; it also lowers the humidity that the sensor sees
 * @param seconds time constant
 * @param noise standard deviation of the noise, K
 */
public record TemperatureResponse(
        double resolution, double offset, double gain, double selfHeating, double seconds, double noise) {
    private static final double CALIBRATED_CELSIUS = 23;

    public TemperatureResponse {
        Limits.between("resolution of the temperature", resolution, 0, 5, "K");
        Limits.between("offset of the temperature", offset, -10, 10, "K");
        Limits.between("gain error of the temperature", gain, -0.1, 0.1, "K/K");
        Limits.between("self-heating", selfHeating, 0, 3, "K");
        Limits.between("time constant of the temperature", seconds, 0, 3600, "s");
        Limits.between("noise of the temperature", noise, 0, 1, "K");
    }

    /** What is shown for a temperature of the sensor, before noise and rounding. */
    double shownFor(double sensor) {
        return sensor + offset + gain * (sensor - CALIBRATED_CELSIUS);
    }

    TemperatureResponse shiftedBy(double kelvin) {
        return new TemperatureResponse(resolution, offset + kelvin, gain, selfHeating, seconds, noise);
    }

    public TemperatureResponse withResolution(double kelvin) {
        return new TemperatureResponse(kelvin, offset, gain, selfHeating, seconds, noise);
    }
}
