// SPDX-License-Identifier: Apache-2.0
/**
 * Tells people outside of the pages what happens to a run, by a command or by a program on this machine. Start at
 * {@link isohume.station.notice.Notifier}. Nothing here can hold up or end a run.
 */
@NullMarked
@CheckReturnValue
package isohume.station.notice;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
