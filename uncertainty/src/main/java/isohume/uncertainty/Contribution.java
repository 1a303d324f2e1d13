// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

/**
 * What one input adds to the combined uncertainty.
 *
 * @param standardUncertainty of the input, in its unit
 * @param sensitivity of the measurand to the input, in the measurand's unit per the input's
 * @param contribution sensitivity times standard uncertainty, signed, in the measurand's unit
 * @param indexPercent the contribution's square over the combined one's; sums to 100 without correlations
 */
public record Contribution(
        Input input, double standardUncertainty, double sensitivity, double contribution, double indexPercent) {}
