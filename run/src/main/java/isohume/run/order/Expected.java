// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import java.time.Duration;

/**
 * A predicted time with its spread.
 *
 * @param minutes the mean
 * @param spread standard deviation of what it may turn out to be, min
 */
public record Expected(double minutes, double spread) {
    private static final double NINETY_PER_CENT = 1.645; // two-sided, normal

    public Expected {
        if (!(minutes >= 0) || !(spread >= 0)) {
            throw new IllegalArgumentException(
                    "a time and its spread are not negative, were " + minutes + " and " + spread + " min");
        }
    }

    public Duration mean() {
        return Duration.ofMillis(Math.round(minutes * 60_000));
    }

    /** The lower end of an interval that holds the true time nine times in ten, min; lognormal, so never negative. */
    public double low() {
        return minutes == 0 ? 0 : StrictMath.exp(logMean() - NINETY_PER_CENT * logSpread());
    }

    /** The upper end of it, min. */
    public double high() {
        return minutes == 0 ? 0 : StrictMath.exp(logMean() + NINETY_PER_CENT * logSpread());
    }

    private double logSpread() {
        double relative = spread / minutes;
        return Math.sqrt(StrictMath.log1p(relative * relative));
    }

    private double logMean() {
        return StrictMath.log(minutes) - logSpread() * logSpread() / 2;
    }
}
