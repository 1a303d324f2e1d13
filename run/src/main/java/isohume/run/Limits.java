// SPDX-License-Identifier: Apache-2.0
package isohume.run;

/**
 * When a channel counts as settled, in its quantity's difference unit.
 *
 * @param band how far its mean may lie from the set point; infinite where that does not matter
 * @param spread standard deviation about a straight line
 * @param drift per minute, either way
 */
public record Limits(double band, double spread, double drift) {
    public Limits {
        if (!(band > 0) || !(spread > 0) || !(drift > 0)) {
            throw new IllegalArgumentException(
                    "limits must be positive, were " + band + ", " + spread + ", " + drift + " per minute");
        }
    }
}
