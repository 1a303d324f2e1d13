// SPDX-License-Identifier: Apache-2.0
/**
 * Sixty-four devices read once a second by one process. Start at {@link isohume.benchmarks.devices.Polling}.
 */
@NullMarked
@CheckReturnValue
package isohume.benchmarks.devices;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
