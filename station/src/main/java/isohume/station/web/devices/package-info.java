// SPDX-License-Identifier: Apache-2.0
/** Devices of the bench and others, tried out. Start at {@link isohume.station.web.devices.DevicesPage}. */
@NullMarked
@CheckReturnValue
package isohume.station.web.devices;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
