// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** Proportional-integral control with limits; the integral stands still while the output is at a limit. */
final class PiController {
    private final double gain;
    private final double resetSeconds;
    private final double lowest;
    private final double highest;
    private double integral;

    /**
     * @param gain output per unit of the error
     * @param resetSeconds integral time
     */
    PiController(double gain, double resetSeconds, double lowest, double highest) {
        this.gain = gain;
        this.resetSeconds = resetSeconds;
        this.lowest = lowest;
        this.highest = highest;
    }

    /** The output after one step, given what is known to be needed without control. */
    double output(double error, double feedForward) {
        double free = feedForward + gain * error + integral;
        boolean pushesOut = (free > highest && error > 0) || (free < lowest && error < 0);
        if (!pushesOut) {
            integral += gain * error * World.STEP_SECONDS / resetSeconds;
            integral = Math.clamp(integral, lowest - highest, highest - lowest);
        }
        return Math.clamp(free, lowest, highest);
    }

    void reset() {
        integral = 0;
    }
}
