// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.driver.Shown;

/** A channel and where its value lies. */
record Register(Shown shown, Field field) {}
