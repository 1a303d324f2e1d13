// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A signal on its way to where it ends. It is taken as a level and exponentials of unknown time constants in noise
 * that resembles its neighbours; see {@link Mixture}. The beginning of an approach is nothing of the kind, so windows
 * of several lengths are tried, all up to now, and the one that leaves least uncertainty is used: a longer one tells
 * more while it fits, and where it does not fit its scatter tells so.
 *
 * <p>What data cannot show is bounded by what is {@linkplain Owed owed}, and by the signal itself: it may go on to
 * change as much again as it did in the window.
 */
public final class Tail {
    private static final int FEWEST_STRETCHES = 15;
    private static final double SHORTEST_SECONDS = 120;
    private static final double NEXT_WINDOW = 0.7; // of the length of the one before
    private static final double SMALLEST = 1e-9; // standard deviation, to divide by

    private final History history;

    /** @param intervalSeconds time between two values */
    public Tail(double intervalSeconds) {
        this.history = new History(intervalSeconds);
    }

    /**
     * The next value.
     *
     * @param seconds from any origin, rising
     * @param shown the figures on the display behind it
     */
    public void take(double seconds, double value, double shown) {
        history.add(seconds, value, shown);
    }

    /** Forgets everything. */
    public void clear() {
        history.clear();
    }

    /** Mean of the last two minutes, or of what there is; empty when there is nothing. */
    public OptionalDouble recentMean() {
        double sum = 0;
        int values = 0;
        int least = history.bins() - (int) Math.ceil(SHORTEST_SECONDS / history.width());
        for (int i = Math.max(0, least); i < history.bins(); i++) {
            if (history.count(i) > 0) {
                sum += history.mean(i) * history.count(i);
                values += history.count(i);
            }
        }
        return values == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / values);
    }

    /** How much longer it has to be watched before anything can be said, in seconds; 0 when something can. */
    public double unfilled() {
        return Math.max(0, shortest() - history.spanned());
    }

    private double shortest() {
        return Math.max(SHORTEST_SECONDS, FEWEST_STRETCHES * history.width());
    }

    /**
     * What is still to come, as far as can be said now; empty when too little was seen.
     *
     * @param step one unit of the display's last digit; 0 when nothing is rounded
     * @param leastSeconds the shortest time that may be looked at, where there is as much: that over which a mean is to
     *     be compared with where the signal ends
     */
    public Optional<Outlook> outlook(Owed owed, double step, double leastSeconds) {
        if (unfilled() > 0) {
            return Optional.empty();
        }
        Moments moments = new Moments(history);
        double[] late = owed.now();
        int least = (int) Math.ceil(Math.max(shortest(), leastSeconds) / history.width()) + 1;
        Outlook best = null;
        for (double length = least; Math.round(length) <= history.bins(); length /= NEXT_WINDOW) {
            Outlook one = outlook(moments, history.bins() - (int) Math.round(length), late, step);
            best = better(best, one);
        }
        return Optional.ofNullable(better(best, outlook(moments, 0, late, step)));
    }

    private static @Nullable Outlook better(@Nullable Outlook one, @Nullable Outlook other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return other.toCome().standardUncertainty() < one.toCome().standardUncertainty() ? other : one;
    }

    private @Nullable Outlook outlook(Moments moments, int from, double[] owed, double step) {
        moments.reachBackTo(from);
        Window window = new Window(history, moments, from);
        if (window.present() < FEWEST_STRETCHES / 2) {
            return null;
        }
        Prior prior = new Prior(window, owed);
        double rounding = window.rounding(step);
        Residuals residuals = window.residuals(mixture(moments, window.roughness() + rounding, prior));
        double variance = residuals.longRunVariance() * residuals.student() + rounding;
        return new Outlook(mixture(moments, variance, prior), residuals, window.seconds());
    }

    private static Mixture mixture(Moments moments, double variance, Prior prior) {
        return new Mixture(moments, Math.max(SMALLEST * SMALLEST, variance), prior);
    }
}
