// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

/**
 * What is held possible of a window's exponentials before it is looked at: amplitudes at its end about 0. A late part
 * may be as large as what is owed; and any part as large as what moved in the window's last part, as long as it took
 * less than all of the window's range at its beginning.
 */
final class Prior {
    private static final double SMALLEST = 1e-9; // to divide by

    private final double[] spread = new double[TimeConstants.COUNT];

    /** @param owed standard deviation of what is owed, by time constant */
    Prior(Window window, double[] owed) {
        double range = window.range();
        for (int k = 0; k < spread.length; k++) {
            double tau = TimeConstants.seconds(k);
            double most = range * StrictMath.exp(-window.seconds() / tau);
            spread[k] = Math.max(SMALLEST, Math.hypot(owed[k], Math.min(most, window.moved(tau))));
        }
    }

    /** Standard deviation of an amplitude. */
    double spread(int k) {
        return spread[k];
    }
}
