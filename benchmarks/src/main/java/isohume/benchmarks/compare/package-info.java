// SPDX-License-Identifier: Apache-2.0
/**
 * Isohume beside general open-source libraries on the same work, in one session, each in a process of its own. Start at
 * {@link isohume.benchmarks.compare.Compare}; what a process must understand is in
 * {@link isohume.benchmarks.compare.Contestant}.
 */
@NullMarked
@CheckReturnValue
package isohume.benchmarks.compare;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
