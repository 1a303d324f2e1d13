// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import java.util.OptionalDouble;

/**
 * What is there to be used up.
 *
 * @param water left in the tank, g; a millilitre is a gram
 * @param dryingAgent water that the drying agent can still take up, g
 */
public record Supplies(OptionalDouble water, OptionalDouble dryingAgent) {
    public static final Supplies NOT_STATED = new Supplies(OptionalDouble.empty(), OptionalDouble.empty());
}
