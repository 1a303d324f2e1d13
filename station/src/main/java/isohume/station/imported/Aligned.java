// SPDX-License-Identifier: Apache-2.0
package isohume.station.imported;

/**
 * The fact that a person saw a logger's record over the reference's and confirmed that the clocks are so aligned.
 *
 * @param reference SHA-256 of the reference's file
 * @param offsetSeconds the logger's clock minus the reference's, in the middle of the logger's record
 * @param expandedSeconds what it is uncertain by, for a coverage of at least about 95 %
 * @param driftSecondsPerDay by which the offset grows
 */
public record Aligned(
        String reference,
        double offsetSeconds,
        double expandedSeconds,
        double driftSecondsPerDay,
        String how,
        String operator) {}
