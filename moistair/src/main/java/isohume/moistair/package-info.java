// SPDX-License-Identifier: Apache-2.0
/**
 * What humid air is. Start at {@link isohume.moistair.MoistAir}; the formula classes behind it are package-private.
 *
 * <p>May use: {@code quantity}. State: none; everything is immutable and safe for any thread. Errors:
 * {@link isohume.moistair.OutsideRange} when a formula is asked beyond the range its source vouches for, never a clamped
 * value and never NaN.
 */
@NullMarked
@CheckReturnValue
package isohume.moistair;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
