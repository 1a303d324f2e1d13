// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import isohume.uncertainty.fit.Estimate;

/**
 * How late one signal proves to be beside what is assumed of all its kind. A window counts by how much it has shown: one
 * whose readings left the assumption as it was says nothing, and its small estimate is the assumption's own.
 *
 * <p>The variance of a normal distribution about 0 from what was seen of it and a prior worth one window (conjugate, as in
 * Gelman and others, Bayesian Data Analysis, 2.6; from memory).
 */
public final class Lateness {
    private static final double ASSUMED = 1; // windows that the assumption is worth

    private double windows;
    private double squares;

    /** A window is over: what was still to come of its signal, and what had been assumed of that. */
    public void learn(Estimate toCome, double assumed) {
        double u = toCome.standardUncertainty();
        if (u < assumed) {
            double shown = 1 - u * u / (assumed * assumed);
            double seen = Math.hypot(toCome.value(), u) / assumed * scale();
            windows += shown;
            squares += shown * seen * seen;
        }
    }

    /** The factor to what is assumed; 1 as long as nothing was shown. */
    public double scale() {
        return Math.sqrt((ASSUMED + squares) / (ASSUMED + windows));
    }
}
