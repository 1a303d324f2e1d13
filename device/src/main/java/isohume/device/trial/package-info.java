// SPDX-License-Identifier: Apache-2.0
/**
 * Trying a device out: read again and again, what it gave, how fast, and what is wrong in plain words. Start at
 * {@link isohume.device.trial.Trial}.
 */
@NullMarked
@CheckReturnValue
package isohume.device.trial;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
