// SPDX-License-Identifier: Apache-2.0
/**
 * Looks for what can go wrong on a bench while nobody watches, one poll at a time. Start at
 * {@link isohume.run.watch.Watch}; what is done about it is the run's business and stands in
 * {@link isohume.run.watch.Policies}.
 * <p>State: a watch remembers some minutes of each channel; one thread at a time. It reads no clock and no file.
 */
@NullMarked
@CheckReturnValue
package isohume.run.watch;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
