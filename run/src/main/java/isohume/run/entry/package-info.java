// SPDX-License-Identifier: Apache-2.0
/**
 * Displays that a person reads: what they are, what was typed, and whether it can be what they showed. Start at
 * {@link isohume.run.entry.Plausibility}; {@link isohume.run.entry.EntrySheet} is what a run has of them so far.
 */
@NullMarked
@CheckReturnValue
package isohume.run.entry;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
