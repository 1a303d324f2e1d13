// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** A first-order autoregressive wandering about zero with a standard deviation and a correlation time. */
final class Wander {
    private final double kept;
    private final double fresh;
    private final Chance chance;
    private double value;

    /** @param seconds correlation time; 0 for white noise */
    Wander(double standardDeviation, double seconds, Chance chance) {
        this.kept = seconds > 0 ? StrictMath.exp(-World.STEP_SECONDS / seconds) : 0;
        this.fresh = standardDeviation * StrictMath.sqrt(1 - kept * kept);
        this.chance = chance;
        this.value = standardDeviation * chance.normal();
    }

    void step() {
        value = kept * value + fresh * chance.normal();
    }

    double value() {
        return value;
    }
}
