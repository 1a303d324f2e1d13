// SPDX-License-Identifier: Apache-2.0
/**
 * Instruments that answer lines of text, over a serial line or TCP, or send lines by themselves. Start at
 * {@link isohume.device.text.TextDescription}.
 *
 * <p>The bytes are judged by {@code LineQuestion} and {@code TextCodec}, which move none. Patterns are matched in a time
 * proportional to the length of the line, whatever the pattern.
 */
@NullMarked
@CheckReturnValue
package isohume.device.text;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
