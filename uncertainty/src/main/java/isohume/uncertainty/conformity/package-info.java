// SPDX-License-Identifier: Apache-2.0
/**
 * Statements of conformity with a tolerance. Start at {@link isohume.uncertainty.conformity.Conformity}.
 *
 * <p>Sources: JCGM 106:2012, ILAC-G8:09/2019. All comparisons are made on unrounded values. State: none.
 */
@NullMarked
@CheckReturnValue
package isohume.uncertainty.conformity;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
