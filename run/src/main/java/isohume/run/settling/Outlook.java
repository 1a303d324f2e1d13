// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import isohume.uncertainty.fit.Estimate;
import java.time.Duration;
import java.util.Optional;

/** What a signal is expected to do from the last value that was taken on. In the signal's unit. */
public final class Outlook {
    private static final double FIRST_SECONDS = 60; // with which a crossing is looked for
    private static final double LATEST_SECONDS = 8 * 3600;
    private static final int HALVINGS = 5;

    private final Mixture mixture;
    private final Residuals residuals;
    private final double seconds;
    private final Estimate toCome;

    Outlook(Mixture mixture, Residuals residuals, double windowSeconds) {
        this.mixture = mixture;
        this.residuals = residuals;
        this.seconds = windowSeconds;
        this.toCome = of(tau -> -1);
    }

    private interface Factor {
        double with(double tau);
    }

    private static double[] factors(Factor factor) {
        double[] factors = new double[TimeConstants.COUNT];
        for (int k = 0; k < factors.length; k++) {
            factors[k] = factor.with(TimeConstants.seconds(k));
        }
        return factors;
    }

    private Estimate of(Factor factor) {
        return mixture.of(factors(factor));
    }

    /** From now to where it ends. */
    public Estimate toCome() {
        return toCome;
    }

    /** From the mean over the last stretch of time to where it ends. */
    public Estimate toComeFromMeanOver(Duration last) {
        double length = Math.max(1, last.toMillis() / 1000.0);
        return of(tau -> -tau / length * StrictMath.expm1(length / tau));
    }

    /** From now until some time ahead. */
    public Estimate during(Duration ahead) {
        double length = ahead.toMillis() / 1000.0;
        return of(tau -> StrictMath.expm1(-length / tau));
    }

    /** Slope now, per second. */
    public Estimate drift() {
        return of(tau -> -1 / tau);
    }

    /** Standard deviation of the readings about the curve. */
    public double scatter() {
        return residuals.scatter();
    }

    /** How much of the signal this rests on. */
    public Duration seen() {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    /** How large what is still to come may be: its estimate, either way, and its standard uncertainty. */
    public static double size(Estimate toCome) {
        return Math.abs(toCome.value()) + toCome.standardUncertainty();
    }

    /** When its size is expected to be within a limit, if the signal is watched until then; empty beyond eight hours. */
    public Optional<Duration> within(double limit) {
        if (size(toCome) <= limit) {
            return Optional.of(Duration.ZERO);
        }
        double late = FIRST_SECONDS;
        while (sizeAfter(late) > limit) {
            late *= 2;
            if (late > LATEST_SECONDS) {
                return Optional.empty();
            }
        }
        double early = late == FIRST_SECONDS ? 0 : late / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (early + late) / 2;
            if (sizeAfter(middle) > limit) {
                early = middle;
            } else {
                late = middle;
            }
        }
        return Optional.of(Duration.ofSeconds(Math.round(late)));
    }

    /** How large it is expected to be after some seconds. */
    private double sizeAfter(double ahead) {
        return size(mixture.after(1 + ahead / seconds).of(factors(tau -> -StrictMath.exp(-ahead / tau))));
    }
}
