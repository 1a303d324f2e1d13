// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;

import isohume.benchmarks.Options;
import isohume.benchmarks.Report;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PollingTest {
    /** Its figures mean nothing here. */
    @Test
    void every_device_is_read_with_and_without_dead_ones_beside_it() {
        Report report = Polling.measure(new Options(Optional.empty(), true));
        assertEquals(12, report.figures().size());
        assertEquals(0, report.figures().get(5).value(), report.table());
        assertEquals(0, report.figures().get(11).value(), report.table());
    }
}
