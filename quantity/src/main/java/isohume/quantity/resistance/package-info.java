// SPDX-License-Identifier: Apache-2.0
/**
 * Resistance thermometers: from ohms to temperature and back. Start at
 * {@link isohume.quantity.resistance.ResistanceThermometer}. State: none. Errors: {@code IllegalArgumentException} beyond
 * a formula's range, never NaN.
 */
@NullMarked
@CheckReturnValue
package isohume.quantity.resistance;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
