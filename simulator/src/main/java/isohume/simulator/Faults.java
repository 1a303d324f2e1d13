// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Which unit has which fault. */
final class Faults {
    private final Map<Integer, Fault> faults = new ConcurrentHashMap<>();

    Fault of(int unit) {
        return faults.getOrDefault(unit, Fault.NONE);
    }

    void put(int unit, Fault fault) {
        faults.put(unit, fault);
    }
}
