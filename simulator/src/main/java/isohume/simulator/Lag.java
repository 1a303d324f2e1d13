// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** A first-order lag, followed exactly for an input that is constant over the step. */
final class Lag {
    private double value;

    Lag(double start) {
        value = start;
    }

    /** @param seconds time constant; 0 follows at once */
    void follow(double input, double seconds) {
        value = seconds > 0 ? input + (value - input) * StrictMath.exp(-World.STEP_SECONDS / seconds) : input;
    }

    double value() {
        return value;
    }
}
