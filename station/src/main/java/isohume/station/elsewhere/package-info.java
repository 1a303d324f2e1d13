// SPDX-License-Identifier: Apache-2.0
/**
 * A calibration of which only exported files are left: the reference's and one of each instrument. Start at
 * {@link isohume.station.elsewhere.RecordedElsewhere}.
 */
@NullMarked
@CheckReturnValue
package isohume.station.elsewhere;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
