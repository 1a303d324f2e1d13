// SPDX-License-Identifier: Apache-2.0
/**
 * Nights that nobody watches: runs on the simulated bench with one thing going wrong in each, judged by what the
 * simulator knows. Start at {@link isohume.benchmarks.faults.Faults}.
 */
@NullMarked
@CheckReturnValue
package isohume.benchmarks.faults;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
