// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * Water on the walls, in two reservoirs.
 *
 * @param fastShare what the first holds at saturation, as a share of what the air holds at saturation and 23 °C, 0 to 2
 * @param fastSeconds its time constant, from 20 s
 * @param slowShare what the second holds, in the same measure
 * @param slowSeconds its time constant, from 20 s
 * @param drySlowing by how much the time constants grow towards 0 % RH: 1 doubles them
 */
public record Sorption(double fastShare, double fastSeconds, double slowShare, double slowSeconds, double drySlowing) {
    public Sorption {
        Limits.between("share of the fast reservoir", fastShare, 0, 2, "");
        Limits.between("time constant of the fast reservoir", fastSeconds, 20, 1e6, "s");
        Limits.between("share of the slow reservoir", slowShare, 0, 2, "");
        Limits.between("time constant of the slow reservoir", slowSeconds, 20, 1e6, "s");
        Limits.between("slowing in the dry", drySlowing, 0, 100, "");
    }

    /** Clean metal with a little plastic. Common practice, no source. */
    public static Sorption portable() {
        return new Sorption(0.10, 90, 0.15, 1500, 2);
    }

    public static Sorption none() {
        return new Sorption(0, 90, 0, 1500, 0);
    }
}
