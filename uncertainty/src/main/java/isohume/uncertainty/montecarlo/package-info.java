// SPDX-License-Identifier: Apache-2.0
/**
 * Propagation of distributions by a Monte Carlo method, and its comparison with a budget. Start at
 * {@link isohume.uncertainty.montecarlo.MonteCarlo}.
 *
 * <p>Source: JCGM 101:2008. A seed gives the same bits on every machine and with any number of threads. State: none.
 */
@NullMarked
@CheckReturnValue
package isohume.uncertainty.montecarlo;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
