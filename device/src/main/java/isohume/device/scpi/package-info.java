// SPDX-License-Identifier: Apache-2.0
/**
 * Multimeters and scanners that are asked by IEEE 488.2 and SCPI, over TCP or a serial line, and what their readings mean:
 * an analogue signal, a resistance, or the value itself. Only queries are sent. Start at
 * {@link isohume.device.scpi.ScpiDescription}.
 */
@NullMarked
@CheckReturnValue
package isohume.device.scpi;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
