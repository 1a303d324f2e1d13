// SPDX-License-Identifier: Apache-2.0
/**
 * The bench at work: devices opened by their descriptions, clocks, runs carried out on a thread of their own, and what
 * they recorded. Start at {@link isohume.station.bench.Workplace}.
 */
@NullMarked
@CheckReturnValue
package isohume.station.bench;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
