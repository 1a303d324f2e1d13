// SPDX-License-Identifier: Apache-2.0
/**
 * How well clocks are aligned by records, on simulated loggers whose clocks are known. Start at
 * {@link isohume.benchmarks.alignment.AlignmentCases}.
 */
@NullMarked
@CheckReturnValue
package isohume.benchmarks.alignment;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
