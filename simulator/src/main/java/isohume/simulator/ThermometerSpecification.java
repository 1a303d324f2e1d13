// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * The reference thermometer and the two pressure gauges beside it. A certificate is given as its expanded uncertainty
 * (k = 2); everything else that is drawn, as a rectangular half-width.
 *
 * @param seconds time constant of the thermometer
 * @param resolution last digit, K
 * @param noise standard deviation of the white noise, K
 * @param certificate expanded uncertainty of the calibration, K
 * @param drift since then, K
 * @param selfHeating what is left of it, K
 * @param radiation what the walls and the door do to it, K
 * @param pressureCertificate expanded uncertainty of both pressure gauges, common to them, Pa
 * @param pressureDifference what the two may differ by, Pa
 */
public record ThermometerSpecification(
        double seconds,
        double resolution,
        double noise,
        double certificate,
        double drift,
        double selfHeating,
        double radiation,
        double pressureCertificate,
        double pressureDifference) {
    public ThermometerSpecification {
        Limits.between("time constant of the thermometer", seconds, 0, 3600, "s");
        Limits.between("resolution of the thermometer", resolution, 0, 1, "K");
        Limits.between("noise of the thermometer", noise, 0, 1, "K");
        Limits.between("uncertainty of the thermometer's certificate", certificate, 0, 2, "K");
        Limits.between("drift of the thermometer", drift, 0, 2, "K");
        Limits.between("self-heating", selfHeating, 0, 2, "K");
        Limits.between("effect of radiation", radiation, 0, 2, "K");
        Limits.between("uncertainty of the pressure gauges' certificate", pressureCertificate, 0, 2000, "Pa");
        Limits.between("difference of the pressure gauges", pressureDifference, 0, 2000, "Pa");
    }

    /** Certificate U = 0.04 K, drift 0.02 K, self-heating 0.01 K, radiation 0.03 K. Common practice, no source. */
    public static ThermometerSpecification standard() {
        return new ThermometerSpecification(25, 0.001, 0.0015, 0.04, 0.02, 0.01, 0.03, 40, 50);
    }
}
