// SPDX-License-Identifier: Apache-2.0
/**
 * What a series of readings in time says: mean, spread, how many independent readings it is worth, and its drift.
 * Start at {@link isohume.uncertainty.series.Series}.
 *
 * <p>Units: values in the readings' own unit, times in seconds. State: none. Errors: too few readings or times that do
 * not increase are an {@link java.lang.IllegalArgumentException}; never NaN.
 */
@NullMarked
@CheckReturnValue
package isohume.uncertainty.series;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
