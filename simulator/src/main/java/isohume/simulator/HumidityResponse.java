// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * How the humidity channel of an instrument under test answers.
 *
 * @param resolution last digit, % RH
 * @param offset error at 50 % RH and 23 °C, % RH
 * @param gain what is added at 100 % RH and taken at 0 % RH, % RH
 * @param curvature what is added at both ends, % RH
 * @param wetRise what is added at 90 % RH, growing with the square from 60 % RH on, % RH
 * @param perKelvin error per kelvin away from 23 °C at 50 % RH, % RH/K, in proportion to the humidity
 * @param loopWidth difference between falling and rising humidity in the middle of a wide loop, % RH
 * @param creepShare share of a humidity change that comes late, 0 to 0.1
 * @param creepSeconds time constant with which it comes
 * @param seconds time constant at 23 °C; three times as long at 5 °C
 * @param noise standard deviation of the noise, % RH
 */
public record HumidityResponse(
        double resolution,
        double offset,
        double gain,
        double curvature,
        double wetRise,
        double perKelvin,
        double loopWidth,
        double creepShare,
        double creepSeconds,
        double seconds,
        double noise) {
    private static final double CALIBRATED_CELSIUS = 23;
    private static final double SLOWING_KELVIN = 18; // three times as slow 18 K below 23 °C

    public HumidityResponse {
        Limits.between("resolution of the humidity", resolution, 0, 10, "% RH");
        Limits.between("offset of the humidity", offset, -50, 50, "% RH");
        Limits.between("gain error of the humidity", gain, -50, 50, "% RH");
        Limits.between("curvature of the humidity", curvature, -20, 20, "% RH");
        Limits.between("rise of the humidity in the wet", wetRise, -20, 20, "% RH");
        Limits.between("temperature coefficient of the humidity", perKelvin, -1, 1, "% RH/K");
        Limits.between("width of the hysteresis loop", loopWidth, 0, 10, "% RH");
        Limits.between("share of the creep", creepShare, 0, 0.1, "");
        Limits.between("time constant of the creep", creepSeconds, 1, 1e6, "s");
        Limits.between("time constant of the humidity", seconds, 0, 3600, "s");
        Limits.between("noise of the humidity", noise, 0, 5, "% RH");
    }

    /** What is shown beyond the true humidity, apart from hysteresis, when everything has settled. */
    double staticError(double percent, double celsius) {
        double middle = (percent - 50) / 50;
        double wet = Math.max(0, (percent - 60) / 30);
        return offset
                + gain * middle
                + curvature * middle * middle
                + wetRise * wet * wet
                + perKelvin * (celsius - CALIBRATED_CELSIUS) * percent / 50;
    }

    /** Time constant at a temperature of the sensor. */
    double secondsAt(double celsius) {
        return seconds * StrictMath.pow(3, (CALIBRATED_CELSIUS - celsius) / SLOWING_KELVIN);
    }

    HumidityResponse shiftedBy(double percent) {
        return new HumidityResponse(
                resolution,
                offset + percent,
                gain,
                curvature,
                wetRise,
                perKelvin,
                loopWidth,
                creepShare,
                creepSeconds,
                seconds,
                noise);
    }

    public HumidityResponse withResolution(double percent) {
        return new HumidityResponse(
                percent,
                offset,
                gain,
                curvature,
                wetRise,
                perKelvin,
                loopWidth,
                creepShare,
                creepSeconds,
                seconds,
                noise);
    }
}
