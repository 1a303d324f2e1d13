// SPDX-License-Identifier: Apache-2.0
/**
 * Runs and what came of them: the list, a run's results, each result's budget, the readings behind a mean, and the facts
 * as they were written. Start at {@link isohume.station.web.runs.RunsPage}.
 */
@NullMarked
@CheckReturnValue
package isohume.station.web.runs;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
