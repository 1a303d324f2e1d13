// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.benchmarks.Figure;
import isohume.benchmarks.Options;
import isohume.benchmarks.Report;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TimeInChamberTest {
    @TempDir
    private Path folder;

    private Report report() throws Exception {
        return TimeInChamber.measure(
                new Options(Optional.empty(), true, Map.of("--benches", folder.toString(), "--seed", "7")));
    }

    private static double value(Report report, String name) {
        return report.figures().stream()
                .filter(figure -> figure.name().equals(name))
                .mapToDouble(Figure::value)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void by_the_clock_nineteen_points_take_what_adding_up_says() throws Exception {
        Files.writeString(folder.resolve("quick.yaml"), "sorption: {slow-share: 0.02}\n");
        Report report = report();
        // trade figures: 3 soaks of 60 min and 19 points of 25 min
        assertEquals((3 * 60 + 19 * 25) / 60.0, value(report, "time in the chamber, median: by the clock"), 1e-9);
        assertEquals(0, value(report, "without a result: by the clock"));
        assertTrue(value(report, "time in the chamber, median: Isohume") > 19 * 10 / 60.0, report.table());
        assertTrue(report.table().contains("quick"), report.table());
    }

    @Test
    void a_bench_that_reaches_too_little_is_named() throws Exception {
        Files.writeString(folder.resolve("weak.yaml"), "enclosure: {heating-watts: 0, cooling-watts: 0}\n");
        var refused = assertThrows(IllegalArgumentException.class, this::report);
        assertTrue(String.valueOf(refused.getMessage()).startsWith("weak: "), refused.getMessage());
    }

    @Test
    void a_bench_that_is_written_wrongly_is_refused_with_its_place() throws Exception {
        Files.writeString(folder.resolve("wrong.yaml"), "mirror:\n  secnds: 3\n");
        var refused = assertThrows(IllegalArgumentException.class, this::report);
        assertTrue(String.valueOf(refused.getMessage()).contains("wrong.yaml:2:3: secnds"), refused.getMessage());
    }

    @Test
    void a_folder_without_benches_is_refused() {
        assertThrows(IllegalArgumentException.class, this::report);
    }
}
