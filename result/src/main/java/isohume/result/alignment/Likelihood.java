// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/**
 * The likelihood of offset, lags and drift about the likeliest place, averaged over lags and drift. σ is not known
 * either, so the likelihood is the mean square left over to the power of minus half the independent readings (the
 * marginal one for a flat prior of ln σ). How much of what is left over is the reference's noise is not known: half of the
 * way none of it is counted, the other half all.
 *
 * <p>Drawn by a flock of walkers, each of which is moved along the line to another one, so that narrow ridges are walked
 * as easily as wide ones: J. Goodman and J. Weare, Ensemble samplers with affine invariance, Comm. Appl. Math. Comp. Sci.
 * 5 (2010) 65 (from memory). The seed is always the same, so the same records give the same answer.
 */
final class Likelihood {
    private static final long SEED = 18;
    private static final int WALKERS = 32;
    private static final int LOST = 80; // rounds in which the walkers find their way
    private static final int ROUNDS = 200;
    private static final int UNKNOWNS = 5;
    private static final double STRETCH = 2;
    private static final double DAY = 86_400;

    private final Replay replay;
    private final Fit fit;
    private final TimedValues logger;
    private final SplittableRandom random = new SplittableRandom(SEED);
    private final boolean drifts;
    private final Trust trust;
    private final double lowestLeft;
    private final int from;
    private final int to;
    private final List<Place> places = new ArrayList<>();

    private Likelihood(Scan scan, Replay replay, Fit fit, TimedValues logger) {
        this.replay = replay;
        this.fit = fit;
        this.logger = logger;
        Place best = scan.best();
        double about = Math.max(logger.interval(), 60);
        int first = 0;
        int end = logger.size();
        while (first < end && !partnered(best.offset(), about, logger.seconds(first))) {
            first++;
        }
        while (end > first && !partnered(best.offset(), about, logger.seconds(end - 1))) {
            end--;
        }
        from = first;
        to = end;
        drifts = Place.MOST_DRIFT * (logger.last() - logger.first()) / 2 / DAY > logger.interval() / 20;
        fit.anchor(best.shown(replay), 0);
        trust = fit.trust(best.shown(replay), best, from, to);
        lowestLeft = fit.leftOver(best.shown(replay), best.offset(), best.drift(), from, to);
        walk(best);
        fit.anchor(best.shown(replay), 1);
        walk(best);
    }

    static Likelihood of(Scan scan, Replay replay, Fit fit, TimedValues logger) {
        return new Likelihood(scan, replay, fit, logger);
    }

    /** Whether a reading has a partner also at the offsets about one, so that all of these are judged by the same ones. */
    private boolean partnered(double offset, double about, double seconds) {
        return !Double.isNaN(replay.at(seconds - offset - about)) && !Double.isNaN(replay.at(seconds - offset + about));
    }

    private void walk(Place best) {
        Place[] walkers = new Place[WALKERS];
        double[] unlikely = new double[WALKERS];
        for (int i = 0; i < WALKERS; i++) {
            walkers[i] = i == 0 ? best : scattered(best);
            unlikely[i] = unlikely(walkers[i]);
        }
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < WALKERS; i++) {
                int other = (i + 1 + random.nextInt(WALKERS - 1)) % WALKERS;
                double root =
                        1 / Math.sqrt(STRETCH) + random.nextDouble() * (Math.sqrt(STRETCH) - 1 / Math.sqrt(STRETCH));
                double stretch = root * root;
                Place next = walkers[other].beyond(walkers[i], stretch);
                if (next.possible()) {
                    double there = unlikely(next);
                    double chance = (UNKNOWNS - 1) * StrictMath.log(stretch) - (there - unlikely[i]) / 2;
                    if (StrictMath.log(1 - random.nextDouble()) < chance) {
                        walkers[i] = next;
                        unlikely[i] = there;
                    }
                }
            }
            if (round >= LOST) {
                places.addAll(List.of(walkers));
            }
        }
    }

    private Place scattered(Place best) {
        return best.moved(
                        between(-1, 1) * logger.interval() / 10,
                        between(-0.3, 0.3),
                        between(-Place.MOST_HOUSING, Place.MOST_HOUSING),
                        between(-30, 30),
                        drifts ? between(-Place.MOST_DRIFT, Place.MOST_DRIFT) : 0)
                .drifting(drifts);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double unlikely(Place place) {
        double mean = fit.leftOver(place.shown(replay), place.offset(), place.drift(), from, to);
        return trust.unlike(to - from, mean, lowestLeft);
    }

    private double mean(ToDoubleFunction<Place> part) {
        return places.stream().mapToDouble(part).average().orElseThrow();
    }

    double offset() {
        return mean(Place::offset);
    }

    /** The logger's lag and the reference's together, in seconds. */
    double lag() {
        return mean(p -> p.lag() + p.late());
    }

    double drift() {
        return mean(Place::drift);
    }

    double driftExpanded() {
        double drift = drift();
        return drifts
                ? Math.min(2 * Math.sqrt(mean(p -> (p.drift() - drift) * (p.drift() - drift))), Place.MOST_DRIFT)
                : Place.MOST_DRIFT;
    }

    /** Half the width of an interval about the mean that has such a share of the likelihood. */
    double halfWidth(double share) {
        double mean = offset();
        List<Double> away = places.stream()
                .map(p -> Math.abs(p.offset() - mean))
                .sorted(Comparator.naturalOrder())
                .toList();
        return Math.max(away.get((int) (share * away.size())), 1);
    }
}
