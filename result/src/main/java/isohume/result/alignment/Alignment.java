// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

/** What two records tell about two clocks. */
public sealed interface Alignment {
    /**
     * The clocks are aligned.
     *
     * @param offset the logger's clock minus the reference's at {@code at}, in seconds
     * @param expanded that the offset is uncertain by, in seconds, for a coverage of at least about 95 %
     * @param at the time on the logger's clock for which the offset holds, in seconds
     * @param drift by which the offset grows, in seconds per day
     * @param driftExpanded that the drift is uncertain by, in seconds per day
     * @param how where it comes from, in words
     */
    record Found(double offset, double expanded, double at, double drift, double driftExpanded, String how)
            implements Alignment {
        private static final double DAY = 86_400;

        /** A time of the logger's clock by the reference's clock, in seconds. */
        public double reference(double logger) {
            return logger - offset - drift * (logger - at) / DAY;
        }

        /** What that time is uncertain by, in seconds, for a coverage of about 95 %. */
        public double expandedAt(double logger) {
            return Math.hypot(expanded, driftExpanded * (logger - at) / DAY);
        }
    }

    /** Nothing is said, and why. */
    record Refused(Reason reason, String why) implements Alignment {}

    /** Why clocks cannot be aligned by their records. */
    enum Reason {
        /** Too few readings, or they hardly overlap. */
        TOO_SHORT,
        /** Nothing in the records is like something at one time only: flat, or a slope alone. */
        NO_FEATURE,
        /** The records fit at more than one offset, as where the same change comes again and again. */
        AMBIGUOUS
    }
}
