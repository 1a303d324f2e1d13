// SPDX-License-Identifier: Apache-2.0
/**
 * The bench at work: its page, its live stream, the wall view, and orders to a run. Start at {@link
 * isohume.station.web.bench.BenchPage}; {@link isohume.station.web.bench.Followed} is where facts become what is shown.
 */
@NullMarked
@CheckReturnValue
package isohume.station.web.bench;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
