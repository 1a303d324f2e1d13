// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

/** A program of its own, so that its heap can be limited. */
final class MillionTrials {
    private MillionTrials() {}

    public static void main(String[] arguments) {
        Settings endless = new Settings(1, 2, 1e9, 1_000_000, 2, Settings.Kind.SYMMETRIC);
        for (int round = 0; round < 2; round++) { // the second shows the time without warming up
            long start = System.nanoTime();
            Propagation found = MonteCarlo.propagate(MonteCarloTest.fourteenInputs(), endless);
            long milliseconds = (System.nanoTime() - start) / 1_000_000;
            System.out.println(found.trials() + " trials, 14 inputs, " + milliseconds + " ms, heap limit "
                    + (Runtime.getRuntime().maxMemory() >> 20) + " MB");
        }
    }
}
