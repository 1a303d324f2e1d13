// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import java.util.OptionalDouble;

/**
 * Where water would settle first: the coldest surface that the air touches, and the sample line.
 *
 * @param below how far the coldest surface lies under the air of a chamber at rest, K
 * @param share how far it is from the air towards the room, as a share; the larger of the two counts
 * @param changing how much further it may lie under the air while the temperature changes, K: walls that cool the air,
 *     bodies that warm later than it
 * @param room temperature of the room, °C
 * @param lineAbove how far the sample line is kept above the chamber, K
 * @param lineAt where the line is kept at a temperature of its own instead, °C
 * @param stated whether the bench says so, or whether these are the usual figures, which warn and do not refuse
 */
public record Surfaces(
        double below,
        double share,
        double changing,
        double room,
        double lineAbove,
        OptionalDouble lineAt,
        boolean stated) {
    private static final double THERE = 0.3; // K; common practice, no source
    private static final double LAG = 3; // of a body with three quarters of the air's own time constant

    public Surfaces {
        if (!(below >= 0) || !(share >= 0 && share < 1) || !(changing >= 0) || !(lineAbove > -50)) {
            throw new IllegalArgumentException("a surface lies at or under the air, were " + below + " K, a share of "
                    + share + ", " + changing + " K while changing, and a line " + lineAbove + " K above");
        }
    }

    /** Common practice, no source: a line about 5 K above the chamber, walls half a kelvin under its air. */
    public static Surfaces usual() {
        return new Surfaces(0.5, 0.03, 3, 23, 5, OptionalDouble.empty(), false);
    }

    /** The coldest surface in a chamber at rest, °C. */
    public double coldest(double air) {
        return air - Math.max(below, share * Math.abs(air - room));
    }

    /**
     * The coldest surface while the air still has some way to go to another temperature, °C. Near the end the lag shrinks
     * with what is still to go; the end counts as reached within the error of a controller.
     *
     * @param still how far the air has to go, K, either way
     */
    public double coldest(double air, double still) {
        double left = Math.max(0, Math.abs(still) - THERE);
        return coldest(air) - Math.min(changing, LAG * left);
    }

    /** Whether a distance from a temperature is no more than the error of a controller. */
    boolean there(double still) {
        return Math.abs(still) <= THERE;
    }

    /** The sample line, °C. */
    public double line(double air) {
        return lineAt.orElse(air + lineAbove);
    }
}
