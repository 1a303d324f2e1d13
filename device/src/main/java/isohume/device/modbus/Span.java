// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

/**
 * Registers side by side.
 *
 * @param address of the first, from 0
 * @param count how many, at least 1
 */
record Span(Table table, int address, int count) {
    /** The address after the last. */
    int end() {
        return address + count;
    }

    boolean holds(Span other) {
        return table == other.table && address <= other.address && other.end() <= end();
    }
}
