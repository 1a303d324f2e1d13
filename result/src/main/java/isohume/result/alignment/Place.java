// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

/**
 * What is tried for a logger's clock and sensor. Offset and lag are bound by their sum: how much later the logger shows
 * a slow change, the delay, is well known where neither of them is.
 *
 * @param delay the offset and the lag, less what the reference itself is late by, in seconds
 * @param logLag the logarithm of the sensor's lag in seconds
 * @param housing the share of the lag that comes after the sensor's own of first order, as from a housing; up to one half
 * @param late what the reference is late by, in seconds
 * @param drift in seconds per day
 */
record Place(double delay, double logLag, double housing, double late, double drift) {
    static final double LEAST_LAG = Math.log(5);
    static final double MOST_LAG = Math.log(2880);

    /** How late the reference itself may be, in seconds: a mirror with its line, a thermometer in air (common practice). */
    static final double MOST_LATE = 120;

    static final double MOST_DRIFT = 6;

    static final double MOST_HOUSING = 0.5;

    static Place at(double offset, double lag, double drift) {
        double logLag = Math.clamp(Math.log(lag), LEAST_LAG, MOST_LAG);
        return new Place(offset + Math.exp(logLag), logLag, 0, 0, drift);
    }

    double lag() {
        return Math.exp(logLag);
    }

    /** The logger's clock minus the reference's, in seconds. */
    double offset() {
        return delay - lag() + late;
    }

    /** The reference's record as this sensor shows it. */
    Replay shown(Replay reference) {
        double own = lag() * (1 - housing);
        return reference.beside(reference.lagging(own), late / own).lagging(lag() * housing);
    }

    /** The place so far away, or the nearest one that is possible. */
    Place moved(double byDelay, double byLag, double byHousing, double byLate, double byDrift) {
        return new Place(
                delay + byDelay,
                Math.clamp(logLag + byLag, LEAST_LAG, MOST_LAG),
                Math.clamp(housing + byHousing, 0, MOST_HOUSING),
                Math.clamp(late + byLate, 0, MOST_LATE),
                Math.clamp(drift + byDrift, -MOST_DRIFT, MOST_DRIFT));
    }

    /** On the line from here to another place, so many times as far from here. */
    Place beyond(Place other, double times) {
        return new Place(
                delay + times * (other.delay - delay),
                logLag + times * (other.logLag - logLag),
                housing + times * (other.housing - housing),
                late + times * (other.late - late),
                drift + times * (other.drift - drift));
    }

    boolean possible() {
        return logLag >= LEAST_LAG
                && logLag <= MOST_LAG
                && housing >= 0
                && housing <= MOST_HOUSING
                && late >= 0
                && late <= MOST_LATE
                && Math.abs(drift) <= MOST_DRIFT;
    }

    Place drifting(boolean drifts) {
        return drifts ? this : new Place(delay, logLag, housing, late, 0);
    }
}
