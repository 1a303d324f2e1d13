// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import java.util.List;
import java.util.SortedMap;

/** A register whose set bits cast doubt on every channel; {@code bits} has the meaning of some of the bits 0 to 15. */
record StatusWord(Span span, SortedMap<Integer, String> bits) {
    /** The meanings of the bits that are set, the lowest bit first. */
    List<String> flags(int word) {
        return bits.entrySet().stream()
                .filter(bit -> (word >> bit.getKey() & 1) == 1)
                .map(java.util.Map.Entry::getValue)
                .toList();
    }
}
