// SPDX-License-Identifier: Apache-2.0
package isohume.device;

import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;

/** Where a chamber is asked to go. */
public record Setpoint(Temperature temperature, RelativeHumidity humidity) {}
