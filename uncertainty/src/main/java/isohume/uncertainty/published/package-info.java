// SPDX-License-Identifier: Apache-2.0
/**
 * Published figures that an installation can check itself against. Start at
 * {@link isohume.uncertainty.published.PublishedChecks}. It stands apart from
 * {@link isohume.uncertainty.PublishedCheck} because it uses every other package here. State: none.
 */
@NullMarked
@CheckReturnValue
package isohume.uncertainty.published;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
