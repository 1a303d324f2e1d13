// SPDX-License-Identifier: Apache-2.0
/** What single reckonings take, measured with JMH. Start at {@link isohume.benchmarks.kernels.Kernels}. */
@NullMarked
@CheckReturnValue
package isohume.benchmarks.kernels;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
