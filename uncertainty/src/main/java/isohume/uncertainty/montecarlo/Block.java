// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import isohume.uncertainty.Budget;
import java.util.Arrays;

/**
 * One block of trials: its model values in no order, their ends, and their moments about the budget's value.
 *
 * <p>A class, not a record, because it holds an array.
 */
final class Block {
    private static final int DRAWN = 250; // trials in a row that one input is drawn for; another number, other draws
    private static final int AT_ONCE = 4 * DRAWN; // trials whose inputs stay in the processor's cache

    private final double[] values;
    private final Ends ends;
    private final double centre;
    private final double sum;
    private final double squares;
    private final int refused;

    private Block(double[] values, double probability, double centre, double sum, double squares, int refused) {
        this.values = values;
        this.ends = Ends.of(values, probability);
        this.centre = centre;
        this.sum = sum;
        this.squares = squares;
        this.refused = refused;
    }

    static Block run(Budget budget, Sampler sampler, RandomStream stream, int trials) {
        double[] values = new double[trials];
        double[][] inputs = new double[sampler.size()][AT_ONCE];
        double[][] normals = new double[sampler.correlatedSize()][AT_ONCE];
        double[] found = new double[AT_ONCE];
        double sum = 0;
        double squares = 0;
        int kept = 0;
        for (int from = 0; from < trials; from += AT_ONCE) {
            int now = Math.min(AT_ONCE, trials - from);
            for (int drawn = 0; drawn < now; drawn += DRAWN) {
                sampler.draw(stream, inputs, normals, drawn, Math.min(drawn + DRAWN, now));
            }
            budget.model().ofEach(inputs, now, found);
            for (int i = 0; i < now; i++) {
                if (Double.isFinite(found[i])) { // others are counted, and too many are an error
                    double deviation = found[i] - budget.value();
                    sum += deviation;
                    squares += deviation * deviation;
                    values[kept] = found[i];
                    kept++;
                }
            }
        }
        double[] all = kept == trials ? values : Arrays.copyOf(values, kept);
        return new Block(all, budget.coverageProbability(), budget.value(), sum, squares, trials - kept);
    }

    double[] values() {
        return values;
    }

    Ends ends() {
        return ends;
    }

    int count() {
        return values.length;
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
