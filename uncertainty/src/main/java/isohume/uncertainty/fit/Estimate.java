// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.fit;

/** A fitted figure and its standard uncertainty, in the same unit. */
public record Estimate(double value, double standardUncertainty) {}
