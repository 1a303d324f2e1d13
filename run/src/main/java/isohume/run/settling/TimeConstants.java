// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

/**
 * The time constants that a tail may have: 20 s to an hour and a half, evenly in the logarithm. What is faster is over
 * before anybody judges it; what is slower cannot be told from an instrument that drifts, within the time of a point.
 * Common practice, no source.
 */
final class TimeConstants {
    static final int COUNT = 13;

    /** How many of them are early, up to 5½ min: sensors, filters, air. The rest are late: bodies, polymers, walls. */
    static final int EARLY = 7;

    private static final double SHORTEST_SECONDS = 20;
    private static final double LONGEST_SECONDS = 5400;
    private static final double[] SECONDS = new double[COUNT];

    static {
        double step = StrictMath.pow(LONGEST_SECONDS / SHORTEST_SECONDS, 1.0 / (COUNT - 1));
        for (int k = 0; k < COUNT; k++) {
            SECONDS[k] = SHORTEST_SECONDS * StrictMath.pow(step, k);
        }
    }

    private TimeConstants() {}

    static double seconds(int k) {
        return SECONDS[k];
    }
}
