// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.driver.Limits;

/**
 * The holding registers by which a chamber is told where to go.
 *
 * @param on what the register {@code run} holds while the chamber drives
 * @param off what it holds at rest
 */
record Controls(Field temperature, Limits temperatures, Field humidity, Limits humidities, int run, int on, int off) {
    Span runSpan() {
        return new Span(Table.HOLDING, run, 1);
    }
}
