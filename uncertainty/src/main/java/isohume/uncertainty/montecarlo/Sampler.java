// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import isohume.uncertainty.Budget;
import isohume.uncertainty.Input;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Fills trials' inputs. Uncorrelated inputs are drawn one by one; correlated ones from correlated standard normals
 * (Cholesky). For normal inputs that is the multivariate normal of JCGM 101, 6.4.8; of other shapes the coefficient is
 * met to within 0.02, since the correlation is that of the normals before they take their shape.
 */
final class Sampler {
    private final double[] estimates;
    private final Draw[] draws;
    private final int[] correlated;
    private final double[][] factor;

    private Sampler(double[] estimates, Draw[] draws, int[] correlated, double[][] factor) {
        this.estimates = estimates;
        this.draws = draws;
        this.correlated = correlated;
        this.factor = factor;
    }

    static Sampler of(Budget budget) {
        List<Input> inputs = budget.inputs();
        int[] correlated = IntStream.range(0, inputs.size())
                .filter(i -> isCorrelated(budget, inputs.get(i).symbol()))
                .toArray();
        List<String> symbols =
                Arrays.stream(correlated).mapToObj(i -> inputs.get(i).symbol()).toList();
        return new Sampler(
                inputs.stream().mapToDouble(Input::estimate).toArray(),
                inputs.stream().map(Draw::of).toArray(Draw[]::new),
                correlated,
                budget.correlations().factor(symbols));
    }

    private static boolean isCorrelated(Budget budget, String symbol) {
        return budget.correlations().pairs().stream()
                .anyMatch(pair -> pair.first().equals(symbol) || pair.second().equals(symbol));
    }

    int size() {
        return estimates.length;
    }

    int correlatedSize() {
        return correlated.length;
    }

    /**
     * Draws the trials from one up to another of each column of {@code inputs}, input by input, using {@code normals} as
     * scratch space.
     */
    void draw(RandomStream stream, double[][] inputs, double[][] normals, int from, int to) {
        int next = 0;
        for (double[] column : normals) {
            for (int trial = from; trial < to; trial++) {
                column[trial] = stream.normal();
            }
        }
        for (int i = 0; i < estimates.length; i++) {
            if (next < correlated.length && correlated[next] == i) {
                for (int trial = from; trial < to; trial++) {
                    double normal = mixed(factor[next], normals, trial);
                    inputs[i][trial] = estimates[i] + draws[i].from(normal, stream);
                }
                next++;
            } else {
                draws[i].fill(inputs[i], from, to, estimates[i], stream);
            }
        }
    }

    private static double mixed(double[] row, double[][] normals, int trial) {
        double sum = 0;
        for (int k = 0; k < row.length; k++) {
            sum += row[k] * normals[k][trial];
        }
        return sum;
    }
}
