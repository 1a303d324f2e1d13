// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

/**
 * How the chamber is swept.
 *
 * @param volume free volume, L
 * @param holding flow of both streams together while a condition stands, L/min of dry gas at 23 °C
 * @param changing the same while it is being changed, L/min
 * @param feed what the streams are made of
 */
public record Flows(double volume, double holding, double changing, Feed feed) {
    /** Where the streams take their air from. */
    public enum Feed {
        /** Both from room air that is dried first. */
        DRIED,
        /** The dry stream from room air that is dried, the wet one from room air as it is. */
        ROOM,
        /** Both from what leaves the chamber. */
        RECIRCULATED
    }

    public Flows {
        if (!(volume > 0) || !(holding >= 0) || !(changing >= holding) || !(changing > 0)) {
            throw new IllegalArgumentException(
                    "a chamber has a volume, and a flow that is not smaller while it changes," + " were " + volume
                            + " L, " + holding + " and " + changing + " L/min");
        }
    }

    /** Common practice, no source: a small portable chamber, swept once in one to three minutes. */
    public static Flows usual() {
        return new Flows(5, 1, 3, Feed.DRIED);
    }

    /** The time constant of a change, min. */
    public double timeConstant() {
        return volume / changing;
    }
}
