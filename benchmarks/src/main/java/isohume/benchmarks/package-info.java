// SPDX-License-Identifier: Apache-2.0
/**
 * How fast Isohume is, measured so that anybody can repeat it: figures with bars, printed as a table and written as
 * JSON. The programs are {@link isohume.benchmarks.kernels.Kernels}, {@link isohume.benchmarks.compare.Compare} and
 * {@link isohume.benchmarks.chamber.TimeInChamber}.
 *
 * <p>May use: every room. Nothing here belongs to the program that people install.
 */
@NullMarked
@CheckReturnValue
package isohume.benchmarks;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
