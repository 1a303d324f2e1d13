// SPDX-License-Identifier: Apache-2.0
/**
 * Instruments and chambers as the program sees them. Start at {@link isohume.device.Instrument} and
 * {@link isohume.device.Chamber}; what comes back is a {@link isohume.device.Reading} or an
 * {@link isohume.device.Answer}.
 *
 * <p>May use: {@code quantity}. Trouble on a wire is an outcome, never an exception.
 */
@NullMarked
@CheckReturnValue
package isohume.device;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
