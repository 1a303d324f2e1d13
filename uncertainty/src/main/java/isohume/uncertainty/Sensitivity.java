// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

/**
 * Sensitivity coefficients by perturbing a model.
 *
 * <p>Source: GUM 5.1.3 note 2 perturbs an input by its standard uncertainty u to both sides. The same is done here with
 * u and u/2 and extrapolated (Richardson), so that the curvature within ±u does not enter and the point stays where
 * the model was meant to be used.
 */
final class Sensitivity {
    private static final double STEP_FOR_CONSTANTS = 1e-4; // of the estimate, when there is no uncertainty to go by

    private Sensitivity() {}

    /** The derivative of the model by the input at the index, at the estimates. */
    static double of(Model model, double[] estimates, int index, double standardUncertainty) {
        double step = standardUncertainty > 0
                ? standardUncertainty
                : STEP_FOR_CONSTANTS * Math.max(1, Math.abs(estimates[index]));
        double wide = centralDifference(model, estimates, index, step);
        double narrow = centralDifference(model, estimates, index, step / 2);
        return (4 * narrow - wide) / 3;
    }

    private static double centralDifference(Model model, double[] estimates, int index, double step) {
        double[] above = estimates.clone();
        double[] below = estimates.clone();
        above[index] += step;
        below[index] -= step;
        double width = above[index] - below[index]; // what the step became after rounding
        return (model.of(above) - model.of(below)) / width;
    }
}
