// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

import isohume.result.alignment.Alignment.Reason;
import isohume.result.alignment.Alignment.Refused;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * All offsets within ± 3 h, each with the lag and the drift that fit best: where the likely ones are.
 *
 * <p>Offsets that leave much of the logger's record beside the reference's are held back: readings without a partner are
 * counted as if they were drawn from all of the logger's, as soon as they are more than a fifth. They are rivals all the
 * same where the part in common is as much alike, and has something in it that is.
 */
final class Scan {
    static final double MOST_DRIFT = 6;

    private static final double FARTHEST = 3 * 3600;
    private static final double DAY = 86_400;
    private static final double NEARLY_AS_LIKELY = 25;
    private static final double LEAST_OVERLAP = 0.5;
    private static final double FULL_OVERLAP = 0.8;
    private static final int CLOSER = 8;
    private static final double[] LAGS = {0, 15, 30, 60, 120, 240, 480, 960, 1920};

    private final Replay[] replays = new Replay[LAGS.length];
    private final Fit fit;
    private final TimedValues logger;
    private final double step;
    private final double[] offsets;
    private final double[] leftOver;
    private final double[] unlikely;
    private final double[] explained;
    private final int[] counts;
    private final int[] lag;
    private final double[] drift;
    private int best;
    private int first;
    private int last;

    private Scan(Replay replay, Fit fit, TimedValues logger) {
        this.fit = fit;
        this.logger = logger;
        for (int i = 0; i < LAGS.length; i++) {
            replays[i] = replay.lagging(LAGS[i], 1);
        }
        step = Math.clamp(logger.interval() / 4, 5, 60);
        int half = (int) Math.ceil(FARTHEST / step);
        offsets = new double[2 * half + 1];
        Arrays.setAll(offsets, i -> (i - half) * step);
        leftOver = new double[offsets.length];
        unlikely = new double[offsets.length];
        explained = new double[offsets.length];
        counts = new int[offsets.length];
        lag = new int[offsets.length];
        drift = new double[offsets.length];
    }

    static Scan of(Replay replay, Fit fit, TimedValues logger) {
        Scan scan = new Scan(replay, fit, logger);
        for (int i = 0; i < scan.offsets.length; i++) {
            scan.look(i);
        }
        scan.lookCloser();
        scan.compare();
        return scan;
    }

    private void look(int place) {
        leftOver[place] = Double.POSITIVE_INFINITY;
        double ends = MOST_DRIFT * (logger.last() - logger.first()) / 2 / DAY;
        int half = (int) Math.ceil(ends / logger.interval()); // none where no drift moves the ends by an interval
        for (int i = 0; i < LAGS.length; i++) {
            for (int d = ends < logger.interval() / 2 ? 0 : -half;
                    d <= (ends < logger.interval() / 2 ? 0 : half);
                    d++) {
                double by = half == 0 ? 0 : MOST_DRIFT * d / half;
                double mean = fit.leftOver(replays[i], offsets[place], by, 0, logger.size());
                counts[place] = fit.count();
                if (mean < leftOver[place]) {
                    keep(place, mean, i);
                    drift[place] = by;
                }
            }
        }
    }

    /** A valley may be narrower than the grid is wide, so each is followed to its bottom. */
    private void lookCloser() {
        double[] seen = leftOver.clone();
        for (int i = 0; i < offsets.length; i++) {
            boolean valley = (i == 0 || seen[i] <= seen[i - 1]) && (i == offsets.length - 1 || seen[i] <= seen[i + 1]);
            double centre = offsets[i];
            for (int part = -CLOSER; valley && part <= CLOSER; part++) {
                keepIfBetter(i, centre + part * step / CLOSER);
            }
        }
    }

    private void keepIfBetter(int place, double offset) {
        for (int i = 0; i < LAGS.length; i++) {
            double mean = fit.leftOver(replays[i], offset, drift[place], 0, logger.size());
            if (mean < leftOver[place]) {
                keep(place, mean, i);
                offsets[place] = offset;
                counts[place] = fit.count();
            }
        }
    }

    private void keep(int place, double mean, int which) {
        leftOver[place] = mean;
        explained[place] = fit.count() * Math.log(fit.spread() / mean);
        lag[place] = which;
    }

    private void compare() {
        int most = Arrays.stream(counts).max().orElse(0);
        double all = Math.log(logger.variance() + 1e-12);
        for (int i = 0; i < offsets.length; i++) {
            double beside = Math.max(0, FULL_OVERLAP * most - counts[i]);
            boolean enough = counts[i] >= LEAST_OVERLAP * most && counts[i] > 10;
            unlikely[i] = enough
                    ? (most - beside) * Math.log(leftOver[i]) + beside * Math.max(all, Math.log(leftOver[i]))
                    : Double.POSITIVE_INFINITY;
            best = unlikely[i] < unlikely[best] ? i : best;
        }
        if (most > 10) {
            double worth = fit.worth(replays[lag[best]], offsets[best], drift[best]);
            double least = unlikely[best];
            for (int i = 0; i < offsets.length; i++) {
                boolean enough = !Double.isInfinite(unlikely[i]);
                unlikely[i] = worth * (unlikely[i] - least);
                double alike = worth * counts[i] * Math.log(leftOver[i] / leftOver[best]);
                boolean rival = enough && alike < NEARLY_AS_LIKELY && worth * explained[i] > NEARLY_AS_LIKELY;
                unlikely[i] = rival ? Math.min(unlikely[i], alike) : unlikely[i];
            }
            bound();
        }
    }

    /** The run of likely offsets about the best; places closer than two intervals belong together. */
    private void bound() {
        int bridge = (int) Math.ceil(2 * logger.interval() / step);
        first = best;
        for (int i = best; i >= 0 && first - i <= bridge; i--) {
            first = unlikely[i] < NEARLY_AS_LIKELY ? i : first;
        }
        last = best;
        for (int i = best; i < offsets.length && i - last <= bridge; i++) {
            last = unlikely[i] < NEARLY_AS_LIKELY ? i : last;
        }
    }

    /** Why the scan alone shows that nothing can be said. */
    Optional<Refused> refusal() {
        if (counts[best] <= 10) {
            return Optional.of(
                    new Refused(
                            Reason.TOO_SHORT,
                            "the two records have hardly any time in common; offsets of more than 3 h are to be noted by hand"));
        }
        long likely = Arrays.stream(unlikely).filter(u -> u < NEARLY_AS_LIKELY).count();
        long here = Arrays.stream(unlikely, first, last + 1)
                .filter(u -> u < NEARLY_AS_LIKELY)
                .count();
        if (first == 0 || last == offsets.length - 1 || 4 * likely > offsets.length) {
            return Optional.of(new Refused(
                    Reason.NO_FEATURE,
                    "nothing that happened in the reference's record can be found again in the logger's; it is flat, or"
                            + " changes too slowly"));
        }
        if (likely > here) {
            return Optional.of(new Refused(Reason.AMBIGUOUS, ambiguous()));
        }
        return Optional.empty();
    }

    private String ambiguous() {
        int second = -1;
        for (int i = 0; i < offsets.length; i++) {
            if ((i < first || i > last) && (second < 0 || unlikely[i] < unlikely[second])) {
                second = i;
            }
        }
        return String.format(
                Locale.ROOT,
                "the records fit at an offset of %.0f s and nearly as well at %.0f s; note the two clocks at the beginning"
                        + " and the end, or give a change that comes once",
                offsets[best],
                offsets[second]);
    }

    double lowest() {
        return offsets[first] - 2 * step;
    }

    double highest() {
        return offsets[last] + 2 * step;
    }

    double step() {
        return step;
    }

    /** Independent readings for each one, by the residuals at the best offset. */
    double worth() {
        return fit.worth(replays[lag[best]], offsets[best], drift[best]);
    }
}
