// SPDX-License-Identifier: Apache-2.0
/**
 * What the readings mean. Start at {@link isohume.result.Evaluation}: it takes a {@link isohume.result.Job} and the
 * {@link isohume.result.Recording}s of its points and gives {@link isohume.result.Results}.
 *
 * <p>May use: {@code moistair}, {@code uncertainty}, {@code journal}, {@code quantity}. State: none. Numbers keep full
 * precision here; they are rounded only for print.
 */
@NullMarked
@CheckReturnValue
package isohume.result;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
