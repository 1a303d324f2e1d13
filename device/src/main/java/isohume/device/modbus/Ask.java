// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import java.util.List;

/** What is asked of a device. */
sealed interface Ask {
    /** What the registers hold. At most 125 registers. */
    record Read(Span span) implements Ask {}

    /** To hold these words from an address of the holding table on. */
    record Write(int address, List<Integer> words) implements Ask {}
}
