// SPDX-License-Identifier: Apache-2.0
/**
 * What the drivers of all protocols have in common: the description of a device, its channels, and how a number becomes a
 * reading. Start at {@link isohume.device.driver.DeviceDescription}.
 */
@NullMarked
@CheckReturnValue
package isohume.device.driver;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
