// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.kernels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.benchmarks.Options;
import isohume.benchmarks.Report;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KernelsTest {
    /** Their figures mean nothing here. */
    @Test
    void every_kernel_runs() {
        Report report = Kernels.measure(new Options(Optional.empty(), true));
        assertEquals(11, report.figures().size());
        assertTrue(report.figures().stream().allMatch(figure -> figure.value() > 0), report.table());
    }
}
