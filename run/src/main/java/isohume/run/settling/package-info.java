// SPDX-License-Identifier: Apache-2.0
/**
 * What a signal has still to change. Start at {@link isohume.run.settling.Tail}: it is fed with values and gives an {@link
 * isohume.run.settling.Outlook}. Whether a display is frozen: {@link isohume.run.settling.Display}. Numbers only: seconds,
 * and whatever unit the values have.
 *
 * <p>May use: {@code uncertainty}, {@code quantity}. One thread at a time; bounded in memory however long it is fed.
 */
@NullMarked
@CheckReturnValue
package isohume.run.settling;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
