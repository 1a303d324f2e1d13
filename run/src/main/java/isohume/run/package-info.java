// SPDX-License-Identifier: Apache-2.0
/**
 * Carries out a plan on a bench with a load, and writes down everything it does. Start at {@link isohume.run.Run}, then
 * {@link isohume.run.RunFact}; {@link isohume.run.Course} is what the facts add up to, for the engine and for pages.
 *
 * <p>May use: {@code device}, {@code journal}, {@code moistair}, {@code uncertainty}, {@code quantity}. Time comes from
 * the {@link isohume.run.Timekeeper} handed in. No device is touched before the intention is on disk, and every way out
 * leaves the chamber at rest.
 */
@NullMarked
@CheckReturnValue
package isohume.run;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
