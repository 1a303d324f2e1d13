// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.benchmarks.Figure;
import isohume.benchmarks.Options;
import isohume.benchmarks.Report;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class EnduranceTest {
    @Test
    void an_hour_at_a_poll_each_second_holds_little() throws IOException {
        Report report = Endurance.measure(new Options(Optional.empty(), true));
        assertEquals(3_600, figure(report, "polls of 24 channels").value(), report.table());
        assertTrue(figure(report, "most heap after a collection").met(), report.table());
    }

    /** The heap of these tests is not that of the program; what it holds does not grow with the hours. */
    @Test
    @Tag("slow")
    void a_day_with_its_journal_on_disk_holds_as_little_and_judges_in_time() throws IOException {
        Report report =
                Endurance.measure(new Options(Optional.empty(), false, Map.of("--hours", "24", "--journal", "disk")));
        assertTrue(report.met(), report.table());
    }

    private static Figure figure(Report report, String name) {
        return report.figures().stream()
                .filter(f -> f.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
