// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.compare;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What one value cost, in nanoseconds.
 *
 * @param clock by the clock
 * @param processor of processor time; what the clock would have shown with nobody else on the machine
 */
record Spent(double clock, double processor) {
    static Spent median(List<Spent> runs) {
        return new Spent(median(runs, Spent::clock), median(runs, Spent::processor));
    }

    private static double median(List<Spent> runs, ToDoubleFunction<Spent> part) {
        double[] sorted = runs.stream().mapToDouble(part).sorted().toArray();
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
