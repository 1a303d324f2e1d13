// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

/**
 * What is held possible of a window's exponentials before it is looked at: amplitudes at its end about 0, or
 * late ones about what was learned at earlier points. A late part
 * may be as large as what is owed; and any part as large as what moved in the window's last part, as long as it took
 * less than all of the window's range at its beginning.
 */
final class Prior {
    private static final double SMALLEST = 1e-9; // to divide by

    private final double[] spread = new double[TimeConstants.COUNT];
    private final double[] mean = new double[TimeConstants.COUNT];
    private final double[] weight = new double[TimeConstants.COUNT];

    Prior(Window window, Owed owed) {
        double range = window.range();
        for (int k = 0; k < spread.length; k++) {
            double tau = TimeConstants.seconds(k);
            double most = range * StrictMath.exp(-window.seconds() / tau);
            spread[k] = Math.max(SMALLEST, Math.hypot(owed.with(k), Math.min(most, window.moved(tau))));
            mean[k] = k < TimeConstants.EARLY ? 0 : owed.expected(k);
            weight[k] = owed.weight(k);
        }
    }

    /** What is expected of a late amplitude; 0 of an early one. */
    double mean(int k) {
        return mean[k];
    }

    /** Logarithm of how probable a late time constant is. */
    double weight(int k) {
        return weight[k];
    }

    /** Standard deviation of an amplitude. */
    double spread(int k) {
        return spread[k];
    }
}
