// SPDX-License-Identifier: Apache-2.0
/**
 * Curves through calibration points and through the approach to a steady value. Start at
 * {@link isohume.uncertainty.fit.StraightLine}, {@link isohume.uncertainty.fit.Polynomial} or
 * {@link isohume.uncertainty.fit.ExponentialApproach}.
 *
 * <p>State: none. Errors: too few points are an {@link java.lang.IllegalArgumentException}; what cannot be fitted is
 * said in the result, never as NaN.
 */
@NullMarked
@CheckReturnValue
package isohume.uncertainty.fit;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
