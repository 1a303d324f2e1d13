// SPDX-License-Identifier: Apache-2.0
/**
 * Keeps a second program off a chamber. Start at {@link isohume.run.lease.Lease}.
 */
@NullMarked
@CheckReturnValue
package isohume.run.lease;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
