// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import java.util.Arrays;

/**
 * A time that no order can beat: the weight of a shortest tree that spans the points, with each point paid or charged for
 * the number of its neighbours until the tree is as much of a path as it gets.
 *
 * <p>Held and Karp, The traveling-salesman problem and minimum spanning trees, Operations Research 18 (1970) 1138, for a
 * path with a given start and a free end. Times differ between there and back: first a potential of each point takes up
 * what part of that it can, which changes every path by its two ends only, then the cheaper direction counts.
 */
final class LowerBound {
    private static final int STEPS = 600;
    private static final double FIRST_STEP = 1.5;
    private static final double SHRINK = 0.985;

    private final int n;
    private final double[][] weight; // n is the start
    private final double[] ending; // what it costs to end at a point

    LowerBound(Costs costs) {
        n = costs.size();
        double[] potential = potential(costs);
        weight = new double[n + 1][n + 1];
        ending = new double[n];
        for (int i = 0; i <= n; i++) {
            Arrays.fill(weight[i], Costs.FORBIDDEN);
        }
        for (int j = 0; j < n; j++) {
            ending[j] = potential[j];
            weight[n][j] = costs.of(n, j) - potential[j];
            weight[j][n] = weight[n][j];
            for (int i = 0; i < j; i++) {
                double there = costs.of(i, j) + potential[i] - potential[j];
                double back = costs.of(j, i) + potential[j] - potential[i];
                weight[i][j] = Math.min(there, back);
                weight[j][i] = weight[i][j];
            }
        }
    }

    private static double[] potential(Costs costs) {
        int n = costs.size();
        double[] potential = new double[n];
        for (int i = 0; i < n; i++) {
            double sum = 0;
            int pairs = 0;
            for (int j = 0; j < n; j++) {
                if (j != i && costs.may(i, j) && costs.may(j, i)) {
                    sum += (costs.of(j, i) - costs.of(i, j)) / 2;
                    pairs++;
                }
            }
            potential[i] = pairs == 0 ? 0 : sum / pairs;
        }
        return potential;
    }

    /** @param known the time of an order that is known, min */
    double minutes(double known) {
        double[] price = new double[n + 1];
        int[] degree = new int[n + 1];
        double best = Double.NEGATIVE_INFINITY;
        double step = FIRST_STEP;
        for (int i = 0; i < STEPS; i++) {
            double bound = tree(price, degree);
            best = Math.max(best, bound);
            int away = 0;
            for (int j = 0; j <= n; j++) {
                int off = degree[j] - wanted(j);
                away += off * off;
            }
            if (away == 0) {
                break;
            }
            double move = step * Math.max(1e-3, known - bound) / away;
            for (int j = 0; j <= n; j++) {
                price[j] += move * (degree[j] - wanted(j));
            }
            step *= SHRINK;
        }
        return Math.clamp(best, 0, known);
    }

    /** Two neighbours each, one of the last being the end; the start has one. */
    private int wanted(int j) {
        return j == n ? 1 : 2;
    }

    /** Weight of the shortest tree at these prices, less what the prices add to a path. */
    private double tree(double[] price, int[] degree) {
        Arrays.fill(degree, 0);
        double[] nearest = new double[n + 1];
        int[] to = new int[n + 1];
        boolean[] in = new boolean[n + 1];
        Arrays.fill(nearest, Double.POSITIVE_INFINITY);
        double sum = 0;
        int last = n;
        in[n] = true;
        for (int k = 0; k < n; k++) {
            int next = -1;
            for (int j = 0; j < n; j++) {
                if (!in[j]) {
                    double through = weight[last][j] + price[last] + price[j];
                    if (through < nearest[j]) {
                        nearest[j] = through;
                        to[j] = last;
                    }
                    next = next < 0 || nearest[j] < nearest[next] ? j : next;
                }
            }
            in[next] = true;
            sum += nearest[next];
            degree[next]++;
            degree[to[next]]++;
            last = next;
        }
        int end = 0;
        for (int j = 1; j < n; j++) {
            end = ending[j] + price[j] < ending[end] + price[end] ? j : end;
        }
        degree[end]++;
        sum += ending[end] + price[end];
        for (int j = 0; j <= n; j++) {
            sum -= wanted(j) * price[j];
        }
        return sum;
    }
}
