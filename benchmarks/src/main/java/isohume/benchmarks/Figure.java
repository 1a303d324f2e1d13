// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import java.util.OptionalDouble;

/**
 * One measured figure.
 *
 * @param bar what the figure may be at most or must be at least, where one was set
 * @param least whether the bar is a least
 */
public record Figure(String name, double value, String unit, OptionalDouble bar, boolean least) {
    public static Figure of(String name, double value, String unit) {
        return new Figure(name, value, unit, OptionalDouble.empty(), false);
    }

    public static Figure atMost(double bar, String name, double value, String unit) {
        return new Figure(name, value, unit, OptionalDouble.of(bar), false);
    }

    public static Figure atLeast(double bar, String name, double value, String unit) {
        return new Figure(name, value, unit, OptionalDouble.of(bar), true);
    }

    /** Whether there is no bar or the figure is on its right side; a figure that is no number misses every bar. */
    public boolean met() {
        return bar.isEmpty() || (least ? value >= bar.getAsDouble() : value <= bar.getAsDouble());
    }
}
