// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

/**
 * What is used up.
 *
 * @param water that evaporates, g
 * @param dryingAgent water that the drying agent takes up, g
 */
public record Use(double water, double dryingAgent) {
    public static final Use NONE = new Use(0, 0);

    public Use plus(Use other) {
        return new Use(water + other.water, dryingAgent + other.dryingAgent);
    }

    public Use times(double factor) {
        return new Use(water * factor, dryingAgent * factor);
    }
}
