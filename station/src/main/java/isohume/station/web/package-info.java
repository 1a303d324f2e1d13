// SPDX-License-Identifier: Apache-2.0
/**
 * Pages, their data under {@code /api}, and their live parts. Start at {@link isohume.station.web.Web}, which serves a
 * {@link isohume.station.web.Desk}: all that pages know of the house behind them.
 *
 * <p>The only package with HTTP in it. Pages keep no state; each has a handler, a view record and a template. Texts a
 * person reads stand in the message bundles ({@code …Texts}).
 */
@NullMarked
@CheckReturnValue
package isohume.station.web;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
