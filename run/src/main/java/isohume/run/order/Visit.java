// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import isohume.device.Setpoint;

/**
 * A condition and the one that it is approached from.
 *
 * @param from where the chamber has been at rest
 * @param to where it is to come to rest
 */
public record Visit(Setpoint from, Setpoint to) {
    /** As {@code run.Plan} has it: any other temperature is a new one. */
    public boolean newTemperature() {
        return from.temperature().compareTo(to.temperature()) != 0;
    }

    /** How far the humidity goes, % RH; negative when drying. */
    double humidityStep() {
        return to.humidity().percent() - from.humidity().percent();
    }

    /** How far the temperature goes, K; negative when cooling. */
    double temperatureStep() {
        return to.temperature().kelvin() - from.temperature().kelvin();
    }
}
