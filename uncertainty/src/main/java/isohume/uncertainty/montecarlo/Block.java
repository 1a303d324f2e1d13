// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import isohume.uncertainty.Budget;
import java.util.Arrays;

/**
 * One block of trials: its model values, sorted, and their moments about the budget's value.
 *
 * <p>A class, not a record, because it holds an array.
 */
final class Block {
    private final double[] sorted;
    private final double centre;
    private final double sum;
    private final double squares;
    private final int refused;

    private Block(double[] sorted, double centre, double sum, double squares, int refused) {
        this.sorted = sorted;
        this.centre = centre;
        this.sum = sum;
        this.squares = squares;
        this.refused = refused;
    }

    static Block run(Budget budget, Sampler sampler, RandomStream stream, int trials) {
        double[] values = new double[trials];
        double[] inputs = new double[sampler.size()];
        double[] normals = new double[sampler.correlatedSize()];
        double sum = 0;
        double squares = 0;
        int kept = 0;
        for (int trial = 0; trial < trials; trial++) {
            sampler.draw(stream, inputs, normals);
            double value = valueOrNaN(budget, inputs);
            if (Double.isFinite(value)) {
                double deviation = value - budget.value();
                sum += deviation;
                squares += deviation * deviation;
                values[kept] = value;
                kept++;
            }
        }
        double[] sorted = kept == trials ? values : Arrays.copyOf(values, kept);
        Arrays.sort(sorted);
        return new Block(sorted, budget.value(), sum, squares, trials - kept);
    }

    /** A far draw may lie outside the model's range; such a trial is counted, and too many are an error. */
    private static double valueOrNaN(Budget budget, double[] inputs) {
        try {
            return budget.model().of(inputs);
        } catch (IllegalArgumentException | ArithmeticException outside) {
            return Double.NaN;
        }
    }

    double[] sorted() {
        return sorted;
    }

    int count() {
        return sorted.length;
    }

    int refused() {
        return refused;
    }

    double sum() {
        return sum;
    }

    double squares() {
        return squares;
    }

    double mean() {
        return centre + sum / count();
    }

    double standardDeviation() {
        return Math.sqrt(Math.max(0, (squares - sum * sum / count()) / (count() - 1)));
    }
}
