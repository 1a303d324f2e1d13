// SPDX-License-Identifier: Apache-2.0
/**
 * Results beside results: agreement of two, a consensus of many, and variance between and within groups. Start at
 * {@link isohume.uncertainty.comparison.Agreement}, {@link isohume.uncertainty.comparison.Consensus} or
 * {@link isohume.uncertainty.comparison.OneWayVariance}. State: none. Units: those of the results.
 */
@NullMarked
@CheckReturnValue
package isohume.uncertainty.comparison;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
