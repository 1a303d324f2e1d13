// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

/**
 * The same moment by two clocks, noted by a person.
 *
 * @param logger what the logger's clock showed, in seconds
 * @param reference what the reference's clock showed, in seconds
 * @param expanded what the difference is uncertain by, in seconds, for a coverage of about 95 %
 */
public record NotedTimes(double logger, double reference, double expanded) {
    private static final double DAY = 86_400;

    /** The offset in the middle of two moments, and the drift between them. */
    public static Alignment between(NotedTimes first, NotedTimes second) {
        double days = (second.logger - first.logger) / DAY;
        if (!(days > 0)) {
            throw new IllegalArgumentException("the second noted time has to be after the first one");
        }
        double before = first.logger - first.reference;
        double after = second.logger - second.reference;
        double both = Math.hypot(first.expanded, second.expanded);
        return new Alignment.Found(
                (before + after) / 2,
                both / 2,
                (first.logger + second.logger) / 2,
                (after - before) / days,
                both / days,
                "two noted times");
    }
}
