// SPDX-License-Identifier: Apache-2.0
/**
 * The protocols that devices are read by, and the drivers for them. Start at {@link isohume.device.protocol.Protocol}.
 */
@NullMarked
@CheckReturnValue
package isohume.device.protocol;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
