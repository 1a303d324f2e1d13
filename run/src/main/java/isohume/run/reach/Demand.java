// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.quantity.DewPoint;

/**
 * What a condition takes.
 *
 * @param point the dew point, or below 0 °C the frost point
 * @param wetShare share of the wet stream in both together (w), by dry gas; outside 0 to 1 the streams cannot be mixed so
 * @param air how far the air is above the dew point, K
 * @param surface how far the coldest surface is above it in a chamber at rest, K
 * @param line how far the sample line is above it, K
 */
public record Demand(DewPoint point, double wetShare, double air, double surface, double line) {}
