// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import java.util.Locale;

/**
 * What an order of points must keep to, besides the directions of hysteresis.
 *
 * @param wetAbove a point above this is wet, % RH
 */
public record Constraints(double wetAbove, Wet wet) {
    /**
     * When wet points may come. A capacitive probe that was kept wet reads too high for hours, so an as-found reading
     * after it is spoilt.
     */
    public enum Wet {
        /** After every ascending or undirected dry point of the plan. */
        LAST,
        /** After those at the same temperature. */
        LAST_AT_TEMPERATURE,
        /** Anywhere. */
        ANYWHERE;

        /** The name in files: {@code last_at_temperature}. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Above about 80 % RH; common practice, no source. */
    public static Constraints usual() {
        return new Constraints(80, Wet.LAST);
    }

    public Constraints with(Wet other) {
        return new Constraints(wetAbove, other);
    }
}
