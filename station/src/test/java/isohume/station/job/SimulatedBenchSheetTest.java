// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import isohume.device.sheet.Sheet;
import isohume.simulator.BenchParameters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class SimulatedBenchSheetTest {
    private static final Path DOCUMENT = Path.of("..", "docs", "formats", "simulated-bench.md");

    @Test
    void what_is_left_out_is_as_in_the_portable_bench() {
        assertEquals(BenchParameters.portable(), SimulatedBenchSheet.read(Sheet.parse("noise: 1", "bench.yaml")));
    }

    @Test
    void the_example_of_the_document_is_understood() throws IOException {
        Matcher yaml = Pattern.compile("(?s)```yaml\n(.*?)```").matcher(Files.readString(DOCUMENT));
        assertEquals(true, yaml.find());
        BenchParameters read = SimulatedBenchSheet.read(Sheet.parse(yaml.group(1), "bench.yaml"));
        assertEquals(0.05, read.streams().leakFlow());
        assertEquals(27, read.surroundings().temperature());
        assertEquals(-1.5, read.transmitters().get(1).humidity().offset());
        assertEquals(
                BenchParameters.portable().transmitters().get(0),
                read.transmitters().get(0));
    }

    /** Every key with its usual value, as the tables of the document have them. */
    @Test
    void the_tables_of_the_document_say_what_is_usual() throws IOException {
        StringBuilder yaml = new StringBuilder();
        for (String line :
                Files.readString(DOCUMENT).split("## `transmitters`")[0].split("\n")) {
            Matcher section = Pattern.compile("## `([a-z]+)`").matcher(line);
            Matcher row =
                    Pattern.compile("\\| `([a-z-]+)` .*\\| ([-0-9.]+) \\|").matcher(line);
            if (section.matches()) {
                yaml.append(section.group(1)).append(":\n");
            } else if (row.matches() && !row.group(1).startsWith("per-kelvin")) { // printed rounded
                yaml.append("  ")
                        .append(row.group(1))
                        .append(": ")
                        .append(row.group(2))
                        .append('\n');
            }
        }
        assertEquals(BenchParameters.portable(), SimulatedBenchSheet.read(Sheet.parse(yaml.toString(), "bench.yaml")));
    }
}
