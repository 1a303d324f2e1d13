// SPDX-License-Identifier: Apache-2.0
/**
 * A run of days at a reading each second: what it takes of memory and time. Start at
 * {@link isohume.benchmarks.endurance.Endurance}.
 */
@NullMarked
@CheckReturnValue
package isohume.benchmarks.endurance;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
