// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import java.time.Duration;

/**
 * How points are approached, judged and recorded.
 *
 * @param interval between two polls of everything, and between two readings of a record
 * @param settling when a point may be recorded
 * @param leastReadings fewest paired readings of a record
 * @param mostReadings most of them
 * @param noiseShare a record between the two is long enough when the noise of its mean, as a standard uncertainty, is
 *     at most this share of the target expanded uncertainty
 * @param longest how long a point may take to settle before a person is asked
 * @param patience how long a channel may be silent before a person is asked
 */
public record Rules(
        Duration interval,
        SettlingRule settling,
        int leastReadings,
        int mostReadings,
        double noiseShare,
        Duration longest,
        Duration patience) {

    /** A tenth of U, a fifth of u, adds 2 % to it. */
    public static final double USUAL_NOISE_SHARE = 0.1;

    /** By what is still to come; readings as is common practice for small chambers with forced air, no source. */
    public static Rules usual() {
        return new Rules(
                Duration.ofSeconds(10),
                SettlingRule.Tail.usual(),
                10,
                30,
                USUAL_NOISE_SHARE,
                Duration.ofHours(4),
                Duration.ofMinutes(1));
    }

    /** By fixed limits and times; common practice for small chambers with forced air, no source. */
    public static Rules fixed() {
        return new Rules(
                Duration.ofSeconds(10),
                SettlingRule.Fixed.usual(),
                30,
                30,
                USUAL_NOISE_SHARE,
                Duration.ofHours(4),
                Duration.ofMinutes(1));
    }

    public Rules {
        if (interval.isNegative() || interval.isZero()) {
            throw new IllegalArgumentException("the interval must be positive, was " + interval);
        }
        if (settling instanceof SettlingRule.Fixed fixed && fixed.window().compareTo(interval.multipliedBy(6)) < 0) {
            throw new IllegalArgumentException("the window must hold at least six polls, was "
                    + fixed.window().toSeconds() + " s with a poll every " + interval.toSeconds() + " s");
        }
        if (longest.isNegative() || patience.isNegative()) {
            throw new IllegalArgumentException("no time can be negative, were " + longest + " and " + patience);
        }
        if (leastReadings < 2 || mostReadings < leastReadings) {
            throw new IllegalArgumentException("a record needs at least 2 readings, and at most no fewer than at least,"
                    + " were " + leastReadings + " to " + mostReadings);
        }
        if (!(noiseShare > 0)) {
            throw new IllegalArgumentException("the share of noise must be positive, was " + noiseShare);
        }
    }
}
