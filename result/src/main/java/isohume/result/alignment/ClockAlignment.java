// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

import isohume.result.alignment.Alignment.Found;
import isohume.result.alignment.Alignment.Reason;
import isohume.result.alignment.Alignment.Refused;
import java.util.Locale;

/**
 * Finds by how much a logger's clock differs from the reference's, from what both recorded.
 *
 * <p>The logger's readings are compared with the reference's record as a sensor with a lag would have shown it, at every
 * offset within ± 3 h; only what is new in each reading counts, not what the ones before foretell. Lag, housing, gain and
 * level are not known and are fitted; a drift is within ± 6 s/day. The likelihood of what is left over is then averaged
 * over all lags and drifts: its mean is the offset, and what holds 99 % of it the stated uncertainty, of which 95 % are
 * relied on. A lag that the record cannot tell from an offset thus widens the uncertainty. To it come what the lag's form
 * and the width between the reference's readings leave open.
 *
 * <p>Refused is what the likelihood leaves open: offsets apart from each other that are nearly as likely (Δχ² below 25),
 * or one whose expanded uncertainty is above the interval, that is a standard uncertainty above half of it (common
 * practice, no source), or above 60 s where that is longer.
 */
public final class ClockAlignment {
    private static final int LEAST_READINGS = 20;
    private static final double BEARABLE = 60;

    /**
     * The share of the likelihood within the stated uncertainty, and the same for the normal distribution. More than 95 %,
     * so that what every model leaves out does not take it below: guards about plateaus rely on it.
     */
    private static final double STATED = 0.99;

    private static final double NORMAL = 2.576;

    /** No lag is exactly of this form; by this share of it a change may seem moved (common practice, no source). */
    private static final double LAG_FORM = 0.05;

    private ClockAlignment() {}

    /** Aligns a logger's record with the reference's of the same quantity; both times in seconds from one origin. */
    public static Alignment of(TimedValues reference, TimedValues logger) {
        if (reference.size() < LEAST_READINGS || logger.size() < LEAST_READINGS) {
            return new Refused(
                    Reason.TOO_SHORT,
                    "the logger has " + logger.size() + " readings and the reference " + reference.size()
                            + "; at least " + LEAST_READINGS + " of each are needed");
        }
        TimedValues thinned =
                reference.thinned(wanted(logger)); // each second of three days would cost a minute, for nothing
        return aligned(thinned.size() < LEAST_READINGS ? reference : thinned, logger);
    }

    private static Alignment aligned(TimedValues reference, TimedValues logger) {
        double smoothing = smoothing(reference, logger);
        Replay replay = Replay.of(reference, step(reference, logger)).smoothed(smoothing);
        Fit fit = new Fit(logger, replay);
        Scan scan = Scan.of(replay, fit, logger);
        return scan.refusal()
                .map(Alignment.class::cast)
                .orElseGet(() -> found(scan, replay, fit, width(reference, smoothing), logger));
    }

    /** The width that is fine enough beside the logger's interval, in seconds. */
    private static double wanted(TimedValues logger) {
        return Math.clamp(logger.interval() / 10, 1, 30);
    }

    /** A grid that has the reference's own readings on it where these are even. */
    private static double step(TimedValues reference, TimedValues logger) {
        double parts = Math.ceil(reference.interval() / wanted(logger));
        return Math.max(reference.interval() / parts, (reference.last() - reference.first()) / 400_000);
    }

    /** A reference that is noisier than a fifth of the logger's noise is smoothed, since an early sensor would raise it. */
    private static double smoothing(TimedValues reference, TimedValues logger) {
        double ratio = reference.noise() / (0.2 * Math.max(logger.noise(), 0.3 * logger.resolution()));
        return ratio > 1 ? Math.min(30, reference.interval() * ratio) : 0;
    }

    /** A standard uncertainty, since when within an interval or a mean of the reference something happened is not known. */
    private static double width(TimedValues reference, double smoothing) {
        return Math.max(reference.blur(), Math.max(reference.interval(), smoothing) / Math.sqrt(12)); // rectangular
    }

    private static Alignment found(Scan scan, Replay replay, Fit fit, double width, TimedValues logger) {
        Likelihood likelihood = Likelihood.of(scan, replay, fit, logger);
        double bearable = Math.max(logger.interval(), BEARABLE);
        double besides = Math.hypot(width, LAG_FORM * likelihood.lag());
        double left = Math.hypot(likelihood.halfWidth(0.95), 2 * besides);
        if (left > bearable) {
            return new Refused(
                    Reason.NO_FEATURE,
                    String.format(
                            Locale.ROOT,
                            "the records leave the offset open by ± %.0f s, and %.0f s are bearable; a quick change that"
                                    + " both have recorded would tell it",
                            left,
                            bearable));
        }
        return new Found(
                likelihood.offset(),
                Math.hypot(likelihood.halfWidth(STATED), NORMAL * besides),
                logger.middle(),
                likelihood.drift(),
                likelihood.driftExpanded(),
                "the likeness of the two records");
    }
}
