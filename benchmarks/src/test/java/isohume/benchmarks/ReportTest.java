// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportTest {
    private static final Machine MACHINE = new Machine("a \"fast\" one", 2, "Linux amd64", "a virtual machine", 0.25);

    private static Report report(Figure... figures) {
        return new Report(MACHINE, Map.of("peer", "1.1"), List.of(figures));
    }

    @Test
    void a_missed_bar_is_said_and_ends_the_program_with_one() {
        Report good = report(Figure.atMost(1, "ratio", 0.99, ""), Figure.of("time", 105.2, "ns"));
        assertEquals(0, good.exitCode());
        assertTrue(good.table().contains("at most 1.00: met"), good.table());
        Report bad = report(Figure.atMost(0.25, "ratio", 0.2501, ""), Figure.of("time", 105.2, "ns"));
        assertEquals(1, bad.exitCode());
        assertTrue(bad.table().contains("at most 0.250: MISSED"), bad.table());
        assertFalse(Figure.atMost(1, "no number", Double.NaN, "").met());
    }

    @Test
    void programs_read_the_same_figures(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("figures.json");
        report(Figure.atMost(0.25, "ratio", 0.5, ""), Figure.of("time", 105.25, "ns"))
                .writeJson(file);
        String expected = """
                {
                  "machine": {"processor": "a \\"fast\\" one", "cores": 2, "system": "Linux amd64", "java": "a virtual machine", "load": 0.25},
                  "versions": {"peer": "1.1"},
                  "figures": [
                    {"name": "ratio", "value": 0.5, "unit": "", "bar": 0.25, "met": false},
                    {"name": "time", "value": 105.25, "unit": "ns", "bar": null, "met": null}
                  ]
                }
                """;
        assertEquals(expected, Files.readString(file));
    }

    @Test
    void other_arguments_are_wrong_use() {
        assertThrows(IllegalArgumentException.class, () -> Options.of(new String[] {"--json"}));
        assertThrows(IllegalArgumentException.class, () -> Options.of(new String[] {"fast"}));
        assertEquals(
                Path.of("f"), Options.of(new String[] {"--json", "f"}).json().orElseThrow());
        Program program = options -> report();
        assertEquals(2, program.run(new String[] {"fast"}));
    }

    @Test
    void this_machine_has_a_name() {
        assertFalse(Machine.here().processor().isBlank());
        assertTrue(Machine.here().cores() >= 1);
    }
}
