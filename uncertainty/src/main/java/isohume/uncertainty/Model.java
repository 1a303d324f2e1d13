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
}
