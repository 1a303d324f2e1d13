// SPDX-License-Identifier: Apache-2.0
/**
 * How long a job keeps a chamber, and what comes out, by common practice and by Isohume, on simulated benches that know
 * the truth. Start at {@link isohume.benchmarks.chamber.TimeInChamber}.
 */
@NullMarked
@CheckReturnValue
package isohume.benchmarks.chamber;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
