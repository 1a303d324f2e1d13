// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import org.junit.jupiter.api.Test;

class SpeedTest {
    /** Processor time of this thread, so that a busy machine does not fail it. */
    @Test
    void ten_hours_pass_in_two_seconds() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        World world = Quiet.running(BenchParameters.portable(), 23, 50);
        long before = threads.getCurrentThreadCpuTime();
        for (int hour = 0; hour < 10; hour++) {
            world.controller().want(10 + 3 * hour, 10 + 8 * hour);
            Quiet.pass(world, 3600);
        }
        double seconds = (threads.getCurrentThreadCpuTime() - before) * 1e-9;
        System.out.printf("10 h of simulated time took %.2f s%n", seconds);
        assertTrue(seconds < 2, () -> seconds + " s");
    }
}
