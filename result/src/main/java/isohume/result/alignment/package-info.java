// SPDX-License-Identifier: Apache-2.0
/**
 * By how much a logger's clock differs from the reference's, and which of its readings belong to which point. Start at
 * {@link isohume.result.alignment.ClockAlignment} and {@link isohume.result.alignment.Plateaus}.
 *
 * <p>May use: nothing else of the program. State: none. Times are seconds from an origin that both records share, an
 * offset is the logger's clock minus the reference's. What cannot be told is refused, with the reason.
 */
@NullMarked
@CheckReturnValue
package isohume.result.alignment;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
