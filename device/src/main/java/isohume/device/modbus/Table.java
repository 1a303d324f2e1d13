// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

/** The two tables of 16-bit registers of a Modbus device. */
enum Table {
    /** Read only; function 4. */
    INPUT,
    /** Read and written; functions 3, 6 and 16. */
    HOLDING
}
