// SPDX-License-Identifier: Apache-2.0
/**
 * Quantities of humid air as values. A quantity is held in one unit, and its factories name the unit they take.
 *
 * <p>May use: nothing. State: none; everything is immutable. Errors: {@link IllegalArgumentException} for a value that
 * is not finite or that no air can have. What an instrument <em>showed</em> is never a quantity: it is a text with
 * digits, kept by the device module; quantities are derived from it.
 */
@NullMarked
@CheckReturnValue
package isohume.quantity;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
