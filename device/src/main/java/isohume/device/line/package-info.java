// SPDX-License-Identifier: Apache-2.0
/**
 * Lines of bytes with deadlines: TCP, serial ports, and recordings of either. Start at {@link isohume.device.line.Line}
 * and {@link isohume.device.line.Question}.
 *
 * <p>State: one connection for each place. Threads: whoever takes a line owns it until it is released. Errors: trouble
 * is an outcome ({@link isohume.device.line.Heard}), never an exception.
 */
@NullMarked
@CheckReturnValue
package isohume.device.line;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
