// SPDX-License-Identifier: Apache-2.0
/** One whole calibration on the simulated bench that comes with the program. Start at {@link isohume.station.demo.LiveDemo} or {@link isohume.station.demo.HeadlessDemo}. */
@NullMarked
@CheckReturnValue
package isohume.station.demo;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
