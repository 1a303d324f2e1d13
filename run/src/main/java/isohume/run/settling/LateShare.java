// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import isohume.uncertainty.fit.Estimate;
import java.util.Arrays;

/**
 * What share of a driver's changes comes late in one signal, by late time constant: at first an assumption about 0, and
 * after every point what the signal has shown of it. It belongs to the instrument, so that it holds for the points that
 * follow; though not exactly, since it differs with humidity and temperature.
 */
public final class LateShare {
    private static final double LEAST_DRIVEN = 3; // of a driver's unit; less shows nothing
    private static final double DIFFERS =
            0.3; // between points, as a part of the first spread: common practice, no source
    private static final double LEAST_WEIGHT = -3; // logarithm; no time constant is ever ruled out

    private final double least;
    private final double[] mean = new double[TimeConstants.COUNT];
    private final double[] spread = new double[TimeConstants.COUNT];
    private final double[] weight = new double[TimeConstants.COUNT];

    /** @param first standard deviation of the share before anything was seen */
    public LateShare(double first) {
        this.least = DIFFERS * first;
        Arrays.fill(spread, first);
    }

    double mean(int k) {
        return mean[k];
    }

    double spread(int k) {
        return spread[k];
    }

    /** Logarithm of how probable a time constant is to be the late one, from what was seen. */
    double weight(int k) {
        return weight[k];
    }

    /** Learns from what a window has shown, apart from what was held before. */
    void learn(Mixture seen, Prior prior, Lagged driver) {
        double best = Double.NEGATIVE_INFINITY;
        for (int k = TimeConstants.EARLY; k < TimeConstants.COUNT; k++) {
            double driven = driver.behind(k);
            if (Math.abs(driven) > LEAST_DRIVEN) {
                learn(k, seen.late(k), prior, driven);
                weight[k] = StrictMath.log(seen.share(k));
            }
            best = Math.max(best, weight[k]);
        }
        for (int k = TimeConstants.EARLY; k < TimeConstants.COUNT; k++) {
            weight[k] = Math.max(LEAST_WEIGHT, weight[k] - best);
        }
    }

    private void learn(int k, Estimate amplitude, Prior prior, double driven) {
        double before = 1 / (prior.spread(k) * prior.spread(k));
        double after = 1 / (amplitude.standardUncertainty() * amplitude.standardUncertainty());
        double shown = Math.max(0, after - before) * driven * driven;
        if (shown == 0) {
            return;
        }
        double share = -(amplitude.value() * after - prior.mean(k) * before) / (after - before) / driven;
        double held = 1 / (spread[k] * spread[k]);
        mean[k] = (mean[k] * held + share * shown) / (held + shown);
        spread[k] = Math.max(least, 1 / Math.sqrt(held + shown));
    }
}
