// SPDX-License-Identifier: Apache-2.0
/**
 * Control charts for references and chambers. Start at {@link isohume.uncertainty.control.ControlChart}. State: none.
 */
@NullMarked
@CheckReturnValue
package isohume.uncertainty.control;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
