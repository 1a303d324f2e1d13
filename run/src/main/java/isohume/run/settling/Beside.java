// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

/**
 * A display beside something else that tells of the same air: how far that went since the display took on its figures, and
 * how far the two came apart. Either alone proves nothing: a late witness still moves when a quick display has arrived, and
 * a display may be off by another amount at another condition.
 */
final class Beside {
    /** Of the time constants: a logger in its housing takes up to a quarter of an hour; common practice, no source. */
    private static final int LAGS = 9;

    private static final double GAIN = 0.1; // of what a display showed otherwise, by which its error may differ

    private final boolean comparable;
    private final double[] least = new double[LAGS];
    private final double[] most = new double[LAGS];
    private boolean fresh = true;
    private double apart = Double.NaN; // at the first rest, then at the last one at which the display was seen to move
    private double atRest; // what it showed there

    /** @param comparable whether the display shows the same quantity, so that it may be off */
    Beside(boolean comparable) {
        this.comparable = comparable;
    }

    /** The display has taken on new figures. */
    void changed() {
        fresh = true;
    }

    /** By how much the air moved and the display did not; 0 when its figures are new. */
    double moved(double shown, Lagged air, double plain) {
        if (fresh) {
            begin(air);
        }
        if (air.atRest(plain / 2) && (fresh || Double.isNaN(apart))) {
            apart = shown - air.value();
            atRest = shown;
        }
        fresh = false;
        double shortest = Double.POSITIVE_INFINITY; // the range of the follower that went least far
        for (int k = 0; k < LAGS; k++) {
            least[k] = Math.min(least[k], air.follower(k));
            most[k] = Math.max(most[k], air.follower(k));
            shortest = Math.min(shortest, most[k] - least[k]);
        }
        if (!comparable) {
            return shortest;
        }
        if (Double.isNaN(apart)) {
            return 0;
        }
        double off = Math.abs(shown - air.value() - apart) - GAIN * Math.abs(shown - atRest);
        return Math.min(shortest, off);
    }

    private void begin(Lagged air) {
        for (int k = 0; k < LAGS; k++) {
            least[k] = air.follower(k);
            most[k] = least[k];
        }
    }
}
