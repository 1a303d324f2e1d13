// SPDX-License-Identifier: Apache-2.0
/**
 * What a bench can attain, what that takes, and how to get there without condensation. Start at {@link
 * isohume.run.reach.Attainment} for one condition, at {@link isohume.run.reach.Way} for the way between two.
 *
 * <p>May use: {@code device} (for set points), {@code moistair}, {@code quantity}. State: none; everything is immutable
 * and safe for any thread. Everything is reckoned at standard pressure, which is near enough for a plan: 84 kPa instead of
 * 101 moves a relative humidity by some thousandths of a per cent.
 */
@NullMarked
@CheckReturnValue
package isohume.run.reach;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
