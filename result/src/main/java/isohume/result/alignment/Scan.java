// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

import isohume.result.alignment.Alignment.Reason;
import isohume.result.alignment.Alignment.Refused;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * All offsets within ± 3 h, each with the lag and the drift that fit best of a few: where the likely ones are. From the
 * likeliest of them that lie apart the way is followed to the bottom; those that end nearly as low as the lowest are
 * rivals.
 *
 * <p>Offsets that leave much of the logger's record beside the reference's are held back: readings without a partner are
 * counted as if nothing but the logger's own past foretold them, as soon as they are more than a fifth. They are rivals
 * all the same where the part in common is as much alike, and has something in it that is.
 */
final class Scan {
    private static final double FARTHEST = 3 * 3600;
    private static final double DAY = 86_400;
    private static final double NEARLY_AS_LIKELY = 25;
    private static final double LEAST_OVERLAP = 0.3;
    private static final double LEAST_RIVAL = 0.5;
    private static final double FULL_OVERLAP = 0.8;
    private static final double SOMETHING = 0.1; // of what the best explains; less is a tail or the air's unrest
    private static final int FOLLOWED = 6;
    private static final double[] LAGS = {0, 15, 30, 60, 120, 240, 480, 960, 1920};

    private final Replay replay;
    private final Replay[] replays = new Replay[LAGS.length];
    private final Fit fit;
    private final TimedValues logger;
    private final double step;
    private final double[] offsets;
    private final Bottom[] seen;
    private int most;
    private double unaided;
    private Bottom best;
    private List<Bottom> bottoms = List.of();
    private Trust trust = new Trust(1, 1);
    private int first;
    private int last;

    /**
     * How well a place fits.
     *
     * @param leftOver mean square that is left over
     * @param spread mean square of what was new in the same readings, with nothing taken from the reference
     */
    private record Bottom(Place place, double leftOver, double spread, int count) {
        /** Δχ² against a better one, of the readings that they have in common with the reference. */
        double unlike(double better, Trust trust) {
            return trust.unlike(count, leftOver, better);
        }

        double explained(Trust trust) {
            return trust.unlike(count, spread, leftOver);
        }
    }

    private Scan(Replay replay, Fit fit, TimedValues logger) {
        this.replay = replay;
        this.fit = fit;
        this.logger = logger;
        for (int i = 0; i < LAGS.length; i++) {
            replays[i] = replay.lagging(LAGS[i]);
        }
        step = Math.clamp(logger.interval() / 4, 5, 60);
        int half = (int) Math.ceil(FARTHEST / step);
        offsets = new double[2 * half + 1];
        Arrays.setAll(offsets, i -> (i - half) * step);
        seen = new Bottom[offsets.length];
        best = new Bottom(Place.at(0, 1, 0), Double.POSITIVE_INFINITY, 0, 0);
    }

    /** Twice: how far the level wanders is not known before something fits. */
    static Scan of(Replay replay, Fit fit, TimedValues logger) {
        Scan scan = new Scan(replay, fit, logger);
        scan.look();
        if (scan.most > 10) {
            fit.learn(scan.best.place.shown(replay), scan.best.place, 0, logger.size());
            scan.look();
            scan.bound();
        }
        return scan;
    }

    private void look() {
        Arrays.setAll(seen, i -> lookAt(offsets[i]));
        most = Arrays.stream(seen).mapToInt(Bottom::count).max().orElse(0);
        if (most > 10) {
            unaided = Math.log(fit.unaided());
            bottoms = valleys().stream().map(this::followed).toList();
            best = bottoms.stream()
                    .min(Comparator.comparingDouble(this::unlikely))
                    .orElseThrow();
            trust = fit.trust(best.place.shown(replay), best.place, 0, logger.size());
        }
    }

    private Bottom lookAt(double offset) {
        Bottom lowest = new Bottom(Place.at(offset, 1, 0), Double.POSITIVE_INFINITY, 0, 0);
        double ends = Place.MOST_DRIFT * (logger.last() - logger.first()) / 2 / DAY;
        // none where no drift moves the ends by half an interval
        int half = ends < logger.interval() / 2 ? 0 : (int) Math.ceil(ends / logger.interval());
        for (int i = 0; i < LAGS.length; i++) {
            for (int d = -half; d <= half; d++) {
                double drift = half == 0 ? 0 : Place.MOST_DRIFT * d / half;
                double mean = fit.leftOver(replays[i], offset, drift, 0, logger.size());
                if (mean < lowest.leftOver) {
                    lowest = new Bottom(Place.at(offset, LAGS[i], drift), mean, fit.spread(), fit.count());
                }
            }
        }
        return lowest;
    }

    private boolean overlaps(Bottom bottom) {
        return bottom.count >= LEAST_OVERLAP * most && bottom.count > 10;
    }

    /** The likeliest of all places, counting those beside the reference's record. */
    private double unlikely(Bottom bottom) {
        if (!overlaps(bottom)) {
            return Double.POSITIVE_INFINITY;
        }
        double beside = Math.max(0, FULL_OVERLAP * most - bottom.count);
        double with = Math.log(bottom.leftOver);
        return (most - beside) * with + beside * Math.max(unaided, with);
    }

    /** The lowest places that lie lower than those about them. */
    private List<Bottom> valleys() {
        List<Bottom> valleys = IntStream.range(0, seen.length)
                .filter(i -> overlaps(seen[i]))
                .filter(i -> i == 0 || seen[i].leftOver <= seen[i - 1].leftOver)
                .filter(i -> i == seen.length - 1 || seen[i].leftOver <= seen[i + 1].leftOver)
                .mapToObj(i -> seen[i])
                .toList();
        ToDoubleFunction<Bottom> byFit = b -> b.leftOver;
        ToDoubleFunction<Bottom> byExplained = b -> -b.explained(new Trust(1, 1));
        ToDoubleFunction<Bottom> byAll = this::unlikely;
        return Stream.of(byFit, byExplained, byAll)
                .flatMap(by ->
                        valleys.stream().sorted(Comparator.comparingDouble(by)).limit(FOLLOWED))
                .distinct()
                .toList();
    }

    private Bottom followed(Bottom from) {
        Descent down = Descent.from(from.place, replay, fit, logger, step);
        double mean =
                fit.leftOver(down.shown(), down.place().offset(), down.place().drift(), 0, logger.size());
        return new Bottom(down.place(), mean, fit.spread(), fit.count());
    }

    /** The run of likely offsets about the best; places closer than two intervals belong together. */
    private void bound() {
        int bridge = (int) Math.ceil(2 * logger.interval() / step);
        int centre = Math.clamp(Math.round((best.place.offset() - offsets[0]) / step), 0, offsets.length - 1);
        double lowest = seen[centre].leftOver;
        for (int i = Math.max(0, centre - bridge); i <= Math.min(offsets.length - 1, centre + bridge); i++) {
            lowest = Math.min(lowest, seen[i].leftOver);
        }
        first = centre;
        for (int i = centre; i >= 0 && first - i <= bridge; i--) {
            first = likely(seen[i], lowest) ? i : first;
        }
        last = centre;
        for (int i = centre; i < offsets.length && i - last <= bridge; i++) {
            last = likely(seen[i], lowest) ? i : last;
        }
    }

    private boolean likely(Bottom bottom, double lowest) {
        return overlaps(bottom) && bottom.unlike(lowest, trust) < NEARLY_AS_LIKELY;
    }

    /** Why the scan alone shows that nothing can be said. */
    Optional<Refused> refusal() {
        if (most <= 10) {
            return Optional.of(
                    new Refused(
                            Reason.TOO_SHORT,
                            "the two records have hardly any time in common; offsets of more than 3 h are to be noted by hand"));
        }
        long alike = Arrays.stream(seen).filter(this::isAsGood).count();
        if (first == 0
                || last == offsets.length - 1
                || 4 * alike > offsets.length
                || best.explained(trust) < NEARLY_AS_LIKELY) {
            return Optional.of(new Refused(
                    Reason.NO_FEATURE,
                    "nothing that happened in the reference's record can be found again in the logger's; it is flat, or"
                            + " changes too slowly"));
        }
        return bottoms.stream()
                .filter(this::isRival)
                .min(Comparator.comparingDouble(b -> b.unlike(best.leftOver, trust)))
                .map(rival -> new Refused(Reason.AMBIGUOUS, ambiguous(rival)));
    }

    private boolean isRival(Bottom bottom) {
        double offset = bottom.place.offset();
        boolean apart = (offset < lowest() || offset > highest())
                && Math.abs(offset - best.place.offset()) > 2 * logger.interval();
        return apart && isAsGood(bottom);
    }

    /** Whether a place fits nearly as well as the best, and has something in it that does. */
    private boolean isAsGood(Bottom bottom) {
        return bottom.count >= LEAST_RIVAL * most
                && likely(bottom, best.leftOver)
                && bottom.explained(trust) > Math.max(NEARLY_AS_LIKELY, SOMETHING * best.explained(trust));
    }

    private String ambiguous(Bottom rival) {
        return String.format(
                Locale.ROOT,
                "the records fit at an offset of %.0f s and nearly as well at %.0f s; note the two clocks at the beginning"
                        + " and the end, or give a change that comes once",
                best.place.offset(),
                rival.place.offset());
    }

    Place best() {
        return best.place;
    }

    double lowest() {
        return Math.min(offsets[first], best.place.offset()) - 2 * step;
    }

    double highest() {
        return Math.max(offsets[last], best.place.offset()) + 2 * step;
    }
}
