// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

/** Which 16-bit word of a 32-bit value has the lower address. Within a word the high byte always comes first. */
enum WordOrder {
    /** The high word. */
    BIG,
    /** The low word. */
    LITTLE
}
