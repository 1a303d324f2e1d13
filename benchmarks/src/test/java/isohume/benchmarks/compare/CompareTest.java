// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.benchmarks.Figure;
import isohume.benchmarks.Options;
import isohume.benchmarks.Report;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Isohume beside itself: the comparison works without any peer; its figures mean nothing here. */
class CompareTest {
    private static Contestant isohume() throws IOException {
        return Contestant.start("Isohume", Isohume.command(20_000));
    }

    @Test
    void every_task_is_run_and_compared() throws Exception {
        try (Contestant ours = isohume();
                Contestant theirs = isohume()) {
            Report report = new Compare(ours, theirs, theirs).report(new Options(Optional.empty(), true));
            assertEquals(23, report.figures().size());
            assertTrue(report.figures().stream().allMatch(figure -> figure.value() > 0), report.table());
            Figure heap = report.figures().get(19);
            assertTrue(heap.name().endsWith("Java heap") && heap.met(), report.table());
        }
    }

    @Test
    void those_who_do_not_do_the_same_work_are_not_compared() throws Exception {
        try (Contestant ours = isohume()) {
            Task humidity = new Task(ours, "humidity");
            Task dewPoint = new Task(ours, "dewpoint");
            assertThrows(IllegalStateException.class, () -> humidity.mustAgreeWith(dewPoint, 0.002, 0));
        }
    }

    @Test
    void a_peer_that_cannot_start_is_named() {
        IOException missing = assertThrows(IOException.class, () -> {
            try (Contestant none = Contestant.start("nobody", List.of("java", "-version"))) {
                String unused = none.version();
            }
        });
        assertTrue(missing.toString().contains("nobody"), missing.toString());
    }
}
