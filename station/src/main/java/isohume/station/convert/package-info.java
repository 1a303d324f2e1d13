// SPDX-License-Identifier: Apache-2.0
/**
 * From one measure of humidity to the others, as the command line and the Convert page give it. Start at {@link
 * isohume.station.convert.Question}, which reads what was typed; {@link isohume.station.convert.Conversion} answers it.
 *
 * <p>Knows nothing of HTTP or of a terminal. Errors: {@link isohume.station.convert.NotUnderstood}.
 */
@NullMarked
@CheckReturnValue
package isohume.station.convert;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
