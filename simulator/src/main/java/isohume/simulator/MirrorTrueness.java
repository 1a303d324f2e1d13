// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** What a seed has drawn for the mirror: calibration, drift, condensate and sample line. */
final class MirrorTrueness {
    private static final double FAR_KELVIN = 40; // the calibration error over this has little to do with itself
    private static final double DRY_LINE = 2.5;
    private static final double DRY_CELSIUS = -9;

    private final MirrorSpecification specification;
    private final double share;
    private final Drawn calibration;
    private final Drawn condensate;
    private final double drift;
    private final double line;

    MirrorTrueness(MirrorSpecification specification, double share, Chance chance) {
        this.specification = specification;
        this.share = share;
        calibration = Drawn.normal(chance);
        condensate = Drawn.rectangular(chance);
        drift = chance.rectangular() * specification.drift();
        line = chance.rectangular() * specification.line();
    }

    /** Shown less true, K, at a mirror temperature. */
    double error(double celsius) {
        double condition = celsius / FAR_KELVIN;
        double dryness = Math.clamp(celsius / DRY_CELSIUS, 0, 1);
        return share
                * (calibration.at(condition) * specification.certificate() / 2
                        + drift
                        + condensate.at(condition) * specification.condensate()
                        + line * (1 + (DRY_LINE - 1) * dryness));
    }
}
