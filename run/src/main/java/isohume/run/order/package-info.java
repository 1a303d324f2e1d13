// SPDX-License-Identifier: Apache-2.0
/**
 * How long a plan takes on a bench, learned from the bench's own runs, and the order of its points that takes least. Start
 * at {@link isohume.run.order.Sequencer} for the order, at {@link isohume.run.order.LearnedTimes} for the time.
 *
 * <p>May use: {@code run}, {@code run.reach}, {@code device}, {@code journal}, {@code moistair}, {@code quantity}. The same
 * plan and the same lessons give the same order on every machine. Times are in minutes.
 */
@NullMarked
@CheckReturnValue
package isohume.run.order;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
