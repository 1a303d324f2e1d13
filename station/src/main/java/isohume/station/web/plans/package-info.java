// SPDX-License-Identifier: Apache-2.0
/**
 * Plans: the list, and the editor with the reach map. The editor keeps no state: what is being edited stands in its form.
 * Start at {@link isohume.station.web.plans.PlansPage}.
 */
@NullMarked
@CheckReturnValue
package isohume.station.web.plans;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
