// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import java.util.Optional;

/**
 * Tells a display that stands still from one that is frozen. It is frozen when it keeps the same figures
 * <ul>
 *   <li>from one condition at rest to another that lies many of its digits away, or
 *   <li>for much longer than it ever did, although its last digit never stood before and the reference still flickers.
 * </ul>
 */
public final class Display {
    private static final double MANY_DIGITS = 10;
    private static final int AT_REST = 12; // values through which a reference keeps to half of what is plain
    private static final int RESTLESS_RUN = 5; // the most times in a row that a restless display has shown the same
    private static final int SEEN = 60; // values of which so much is known
    private static final int TOO_LONG =
            60; // a restless display standing so long: below 1 in 10⁹ at one change in three
    private static final double FLICKER_DIGITS = 2;

    private double shown = Double.NaN;
    private int values;
    private int repeats;
    private int longestRun;
    private double lowest; // of the reference, since the figures changed
    private double highest;
    private double restedAt = Double.NaN; // the first condition at rest with these figures
    private double least; // of the reference, in the present attempt to find it at rest
    private double most;
    private int rested;
    private boolean elsewhere;
    private boolean flickering; // the reference, by more than the display's digits

    /**
     * The next value.
     *
     * @param step one unit of the last digit
     * @param reference what it should follow; NaN when not known
     * @param plain how far that has to move to be noticed by anything that follows it, in the same unit
     */
    public void take(double value, double step, double reference, double plain) {
        values++;
        if (value != shown) {
            change(value, reference);
        } else {
            repeats++;
            lowest = Math.min(lowest, reference);
            highest = Math.max(highest, reference);
        }
        rest(step, reference, plain);
    }

    private void change(double value, double reference) {
        longestRun = Math.max(longestRun, repeats + 1);
        shown = value;
        repeats = 0;
        lowest = reference;
        highest = reference;
        restedAt = Double.NaN;
        rested = 0;
        elsewhere = false;
    }

    private void rest(double step, double reference, double plain) {
        if (Double.isNaN(reference)) {
            rested = 0;
            return;
        }
        least = rested == 0 ? reference : Math.min(least, reference);
        most = rested == 0 ? reference : Math.max(most, reference);
        rested = most - least > plain / 2 ? 0 : rested + 1;
        if (rested == AT_REST) {
            double at = (least + most) / 2;
            restedAt = Double.isNaN(restedAt) ? at : restedAt;
            elsewhere = Math.abs(at - restedAt) > Math.max(MANY_DIGITS * step, plain);
            flickering = highest - lowest >= FLICKER_DIGITS * step;
            rested = 0;
        }
    }

    /** Why it is taken for frozen; empty while it is not. */
    public Optional<String> frozen() {
        if (elsewhere) {
            return Optional.of("the same figures at another condition");
        }
        boolean never = values - repeats > SEEN && longestRun <= RESTLESS_RUN;
        return never && flickering && repeats >= TOO_LONG
                ? Optional.of("the same figures " + repeats + " times, although its last digit never stood before")
                : Optional.empty();
    }
}
