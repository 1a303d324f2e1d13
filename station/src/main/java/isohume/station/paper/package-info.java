// SPDX-License-Identifier: Apache-2.0
/** Files that a calibration leaves: results, readings and certificates. Start at {@link isohume.station.paper.Papers}. */
@NullMarked
@CheckReturnValue
package isohume.station.paper;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
