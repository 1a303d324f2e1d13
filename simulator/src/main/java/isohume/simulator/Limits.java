// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** Refuses parameters for which the model says nothing. */
final class Limits {
    private Limits() {}

    static void between(String what, double value, double lowest, double highest, String unit) {
        if (!(value >= lowest && value <= highest)) { // the negation also catches NaN
            String suffix = unit.isEmpty() ? "" : " " + unit;
            throw new IllegalArgumentException(
                    what + " must be from " + lowest + " to " + highest + suffix + ", was " + value + suffix);
        }
    }
}
