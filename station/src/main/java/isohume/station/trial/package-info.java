// SPDX-License-Identifier: Apache-2.0
/**
 * Trying devices out: over a connection of its own, or through the bench that has one already. Start at
 * {@link isohume.station.trial.Tryouts}; what was found by then is a {@link isohume.station.trial.Report}.
 *
 * <p>State: the last trials, in memory. Threads: one for each trial at work. A trial only reads.
 */
@NullMarked
@CheckReturnValue
package isohume.station.trial;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
