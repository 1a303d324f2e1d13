// SPDX-License-Identifier: Apache-2.0
/**
 * A worksheet carried out on a simulated bench, in the bench's own time and with nobody beside it. Start at
 * {@link isohume.station.rehearsal.Rehearsal}.
 */
@NullMarked
@CheckReturnValue
package isohume.station.rehearsal;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
