// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

/**
 * A measurement model: the measurand as one body over doubles. The budget perturbs it and Monte Carlo runs it, so it
 * must be a pure function, safe for several threads, and must not keep or change the array it is given.
 */
@FunctionalInterface
public interface Model {
    /** The measurand for input values in the order of the budget's inputs, each in its own input's unit. */
    double of(double[] inputs);

    /**
     * The measurand of many trials. A model that is faster with many at once may do it in its own way, to the same bits.
     *
     * @param inputs for each input, in the budget's order, its values in trial 0, 1, 2 and so on
     * @param trials how many; the arrays may be longer
     * @param out takes the values; NaN where the model has none, because the inputs lie outside its range
     */
    default void ofEach(double[][] inputs, int trials, double[] out) {
        double[] one = new double[inputs.length];
        for (int trial = 0; trial < trials; trial++) {
            for (int i = 0; i < one.length; i++) {
                one[i] = inputs[i][trial];
            }
            out[trial] = ofOrNaN(one);
        }
    }

    private double ofOrNaN(double[] inputs) {
        try {
            return of(inputs);
        } catch (IllegalArgumentException | ArithmeticException outside) {
            return Double.NaN;
        }
    }
}
