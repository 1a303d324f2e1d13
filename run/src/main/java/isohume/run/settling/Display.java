// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import java.util.Optional;

/**
 * Tells a display that stands still from one that is frozen. It is frozen when it keeps the same figures
 * <ul>
 *   <li>while what it should follow moves on by many of its digits, or
 *   <li>for much longer than it ever did, although its last digit never stood before.
 * </ul>
 */
public final class Display {
    private static final double MANY_DIGITS = 10;
    private static final double LATEST_SECONDS = 120; // a follower shows something of a change by then
    private static final int BLOCK = 60; // values in which the changes of the last digit are counted
    private static final int FEWEST_BLOCKS = 3;
    private static final double IMPOSSIBLE = 1e-6;

    private double shown = Double.NaN;
    private double sinceSeconds;
    private double sinceReference = Double.NaN;
    private int repeats;
    private int inBlock;
    private int changesInBlock;
    private int blocks;
    private double leastRate = 1;
    private Optional<String> frozen = Optional.empty();

    /**
     * The next value.
     *
     * @param step one unit of the last digit
     * @param reference what it should follow; NaN when not known
     * @param plain how far that has to move to be noticed by anything that follows it, in the same unit
     */
    public void take(double seconds, double value, double step, double reference, double plain) {
        if (value != shown) {
            count(true);
            shown = value;
            sinceSeconds = seconds;
            sinceReference = reference;
            repeats = 0;
            frozen = Optional.empty();
            return;
        }
        repeats++;
        sinceReference = Double.isNaN(sinceReference) ? reference : sinceReference;
        double moved = Math.abs(reference - sinceReference);
        if (seconds - sinceSeconds > LATEST_SECONDS && moved > Math.max(MANY_DIGITS * step, plain)) {
            frozen = Optional.of("the same figures while the reference moved on");
        } else if (blocks >= FEWEST_BLOCKS && repeats * StrictMath.log1p(-leastRate) < StrictMath.log(IMPOSSIBLE)) {
            frozen = Optional.of("the same figures " + repeats + " times, although the last digit never stood before");
        }
        if (frozen.isEmpty()) {
            count(false);
        }
    }

    private void count(boolean change) {
        inBlock++;
        changesInBlock += change ? 1 : 0;
        if (inBlock == BLOCK) {
            leastRate = Math.min(leastRate, Math.min(0.9, (double) changesInBlock / BLOCK));
            inBlock = 0;
            changesInBlock = 0;
            blocks++;
        }
    }

    /** Why it is taken for frozen; empty while it is not. */
    public Optional<String> frozen() {
        return frozen;
    }
}
