// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import java.util.OptionalDouble;

/**
 * One measured figure.
 *
 * @param bar what the figure may be at most, where one was set
 */
public record Figure(String name, double value, String unit, OptionalDouble bar) {
    public static Figure of(String name, double value, String unit) {
        return new Figure(name, value, unit, OptionalDouble.empty());
    }

    public static Figure atMost(double bar, String name, double value, String unit) {
        return new Figure(name, value, unit, OptionalDouble.of(bar));
    }

    /** Whether there is no bar or the figure is not above it; a figure that is no number misses every bar. */
    public boolean met() {
        return bar.isEmpty() || value <= bar.getAsDouble();
    }
}
