// SPDX-License-Identifier: Apache-2.0
/**
 * Uncertainty budgets as the GUM has them. Start at {@link isohume.uncertainty.Budget}; the README names the packages below.
 *
 * <p>May use: Hipparchus, whose mathematics is written in Java throughout, so that every machine gets the same bits.
 * State: none; everything is immutable and safe for any thread. Units: those of the inputs, named beside every figure.
 * Errors: {@link java.lang.IllegalArgumentException} naming the input; never NaN.
 * The packages below this one use it, never the other way round.
 */
@NullMarked
@CheckReturnValue
package isohume.uncertainty;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
