// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The worked example does what its README says. */
class ArchiveStoreExampleTest {
    private static final Path EXAMPLE = Path.of("..", "examples", "archive-store");

    @TempDir
    static Path out;

    private static Said said;

    @BeforeAll
    static void evaluate() {
        said = Said.by(
                "evaluate",
                "--plan",
                EXAMPLE.resolve("plan.yaml"),
                "--readings",
                EXAMPLE.resolve("readings.csv"),
                "--out",
                out);
    }

    @Test
    void it_is_evaluated_without_remarks() throws IOException {
        assertEquals(0, said.code(), said.messages());
        assertEquals(0, summary().get("remarks").size());
        assertTrue(Files.exists(out.resolve("certificate-L-07.pdf")));
        assertTrue(Files.exists(out.resolve("certificate-L-12.pdf")));
    }

    @Test
    void the_lines_of_its_readme_are_printed() throws IOException {
        String readme = Files.readString(EXAMPLE.resolve("README.md"));
        String block = readme.substring(readme.indexOf("instrument  "), readme.lastIndexOf("```"));
        for (String line : block.split("\n")) {
            assertTrue(said.answer().contains(line), () -> line + " is not in\n" + said.answer());
        }
    }

    /** How the readings were made is told in the README: 0.35 less 0.12, and -1.6 % RH, at 50 % RH ascending. */
    @Test
    void the_errors_that_were_put_in_are_found_within_their_uncertainty() throws IOException {
        for (JsonNode point : summary().get("points")) {
            if (point.get("point").intValue() == 3
                    && point.get("quantity").textValue().equals("relative_humidity")) {
                double made = point.get("instrument").textValue().equals("L-07") ? 0.23 : -1.6;
                assertEquals(
                        made, point.get("error").doubleValue(), point.get("U").doubleValue());
            }
        }
    }

    private static JsonNode summary() throws IOException {
        return new ObjectMapper().readTree(Files.readString(out.resolve("summary.json")));
    }
}
