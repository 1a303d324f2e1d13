// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

/** The stretches of a history from a place to its end. */
final class Window {
    /** Readings of a display that does not change are worth as many, for a slope: two at the ends are worth six. */
    private static final int WORTH_OF_NO_CHANGE = 6;

    private final History history;
    private final Moments moments;
    private final int from;

    Window(History history, Moments moments, int from) {
        this.history = history;
        this.moments = moments;
        this.from = from;
    }

    double seconds() {
        return (history.bins() - from) * history.width();
    }

    int present() {
        return moments.stretches;
    }

    /**
     * How much the signal may have had of a follower with a time constant: what it changed over the last such time, or
     * the last half of the window, and the one before.
     */
    double moved(double seconds) {
        int part = Math.clamp(Math.round(seconds / history.width()), 1, (history.bins() - from) / 2);
        int end = history.bins();
        return Math.abs(mean(end - part, end) - mean(end - 2 * part, end - part));
    }

    /** The largest stretch less the smallest. */
    double range() {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = from; i < history.bins(); i++) {
            if (history.count(i) > 0) {
                least = Math.min(least, history.mean(i));
                most = Math.max(most, history.mean(i));
            }
        }
        return most - least;
    }

    private double mean(int start, int end) {
        double sum = 0;
        int n = 0;
        for (int i = start; i < end; i++) {
            if (history.count(i) > 0) {
                sum += history.mean(i);
                n++;
            }
        }
        return n == 0 ? 0 : sum / n;
    }

    /** Variance of a stretch as neighbours differ; a curve does not enter it. */
    double roughness() {
        double squares = 0;
        int n = 0;
        for (int i = from + 1; i < history.bins(); i++) {
            if (history.count(i) > 0 && history.count(i - 1) > 0) {
                double d = history.mean(i) - history.mean(i - 1);
                squares += d * d;
                n++;
            }
        }
        return n == 0 ? 0 : squares / (2 * n);
    }

    /**
     * Variance to add for a display that rounds. While its figures change all the time the scatter has it already; the
     * fewer changes, the fewer independent readings there are, however many were taken.
     */
    double rounding(double step) {
        int changes = 0;
        for (int i = from; i < history.bins(); i++) {
            changes += history.changes(i);
        }
        double worth = WORTH_OF_NO_CHANGE * (1.0 + changes);
        return step * step / 12 * present() / worth;
    }

    Residuals residuals(Mixture mixture) {
        int n = history.bins() - from;
        double[] residuals = new double[n];
        boolean[] present = new boolean[n];
        double[] amplitudes = mixture.amplitudes();
        double[] basis = new double[TimeConstants.COUNT];
        java.util.Arrays.fill(basis, 1);
        double mean = 0;
        double weight = 0;
        for (int i = n - 1; i >= 0; i--) {
            present[i] = history.count(from + i) > 0;
            if (present[i]) {
                double w = moments.weight(from + i);
                residuals[i] = history.mean(from + i) - moments.level() - sum(amplitudes, basis);
                mean += w * residuals[i];
                weight += w;
            }
            for (int k = moments.known; k < basis.length; k++) {
                basis[k] *= moments.growth[k];
            }
        }
        for (int i = 0; i < n; i++) {
            residuals[i] = present[i] ? residuals[i] - mean / weight : 0;
        }
        return Residuals.of(residuals, present, mixture.parameters());
    }

    private static double sum(double[] amplitudes, double[] basis) {
        double sum = 0;
        for (int k = 0; k < basis.length; k++) {
            sum += amplitudes[k] * basis[k];
        }
        return sum;
    }
}
