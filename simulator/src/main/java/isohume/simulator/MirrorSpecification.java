// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * The reference dew-point mirror. A certificate is given as its expanded uncertainty (k = 2); everything else that is
 * drawn, as a rectangular half-width.
 *
 * @param seconds time constant at dew points from 10 °C on; it grows to six times this at -30 °C
 * @param resolution last digit, K
 * @param wander standard deviation of the correlated noise, K
 * @param noise standard deviation of the white noise, K
 * @param certificate expanded uncertainty of the calibration, K
 * @param drift since then, K
 * @param condensate effect of dirt and droplets, K
 * @param line sorption and leaks of the sample line, K; 2.5 times as much at frost points below -9 °C
 */
public record MirrorSpecification(
        double seconds,
        double resolution,
        double wander,
        double noise,
        double certificate,
        double drift,
        double condensate,
        double line) {
    public MirrorSpecification {
        Limits.between("time constant of the mirror", seconds, 0, 3600, "s");
        Limits.between("resolution of the mirror", resolution, 0, 1, "K");
        Limits.between("correlated noise of the mirror", wander, 0, 1, "K");
        Limits.between("white noise of the mirror", noise, 0, 1, "K");
        Limits.between("uncertainty of the mirror's certificate", certificate, 0, 2, "K");
        Limits.between("drift of the mirror", drift, 0, 2, "K");
        Limits.between("condensate effect", condensate, 0, 2, "K");
        Limits.between("effect of the sample line", line, 0, 2, "K");
    }

    /** Certificate U = 0.10 K, drift 0.05 K, condensate 0.03 K, line 0.02 K. Common practice, no source. */
    public static MirrorSpecification standard() {
        return new MirrorSpecification(20, 0.01, 0.007, 0.004, 0.10, 0.05, 0.03, 0.02);
    }
}
