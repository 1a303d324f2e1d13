// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import java.time.Duration;

/**
 * How points are approached, judged and recorded.
 *
 * @param interval between two polls of everything, and between two readings of a record
 * @param window over which settling is judged
 * @param temperature limits of the reference air temperature
 * @param dewPoint limits of the dew or frost point; no band, the humidity's band says it
 * @param humidity limits of the reference relative humidity
 * @param humidityDifference limits of each instrument's relative humidity minus the reference
 * @param temperatureDifference limits of each instrument's temperature minus the reference
 * @param soak how long a settled point is kept before it is recorded
 * @param temperatureSoak the same for the first point at a new temperature
 * @param readings how many paired readings make a record
 * @param longest how long a point may take to settle before a person is asked
 * @param patience how long a channel may be silent before a person is asked
 */
public record Rules(
        Duration interval,
        Duration window,
        Limits temperature,
        Limits dewPoint,
        Limits humidity,
        Limits humidityDifference,
        Limits temperatureDifference,
        Duration soak,
        Duration temperatureSoak,
        int readings,
        Duration longest,
        Duration patience) {

    private static final double ANYWHERE = Double.POSITIVE_INFINITY;

    /** Common practice, no source: working criteria for small chambers with forced air. */
    public static Rules usual() {
        return new Rules(
                Duration.ofSeconds(10),
                Duration.ofMinutes(5),
                new Limits(0.5, 0.01, 0.004),
                new Limits(ANYWHERE, 0.02, 0.01),
                new Limits(2, 0.05, 0.02),
                new Limits(ANYWHERE, 0.1, 0.02),
                new Limits(ANYWHERE, 0.05, 0.004),
                Duration.ofMinutes(10),
                Duration.ofMinutes(30),
                30,
                Duration.ofHours(4),
                Duration.ofMinutes(1));
    }

    public Rules {
        if (interval.isNegative() || interval.isZero() || window.compareTo(interval.multipliedBy(6)) < 0) {
            throw new IllegalArgumentException("the window must hold at least six polls, was " + window.toSeconds()
                    + " s with a poll every " + interval.toSeconds() + " s");
        }
        if (soak.isNegative() || temperatureSoak.isNegative() || longest.isNegative() || patience.isNegative()) {
            throw new IllegalArgumentException("no time can be negative, were " + soak + ", " + temperatureSoak + ", "
                    + longest + " and " + patience);
        }
        if (readings < 2) {
            throw new IllegalArgumentException("a record needs at least 2 readings, was " + readings);
        }
    }
}
