// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The worked example with derived channels does what its README says. */
class DerivedDewPointExampleTest {
    private static final Path EXAMPLE = Path.of("..", "examples", "derived-dew-point");

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

    private static JsonNode result(String instrument, String quantity, int point) throws IOException {
        for (JsonNode one : new ObjectMapper()
                .readTree(Files.readString(out.resolve("summary.json")))
                .get("points")) {
            if (one.get("instrument").textValue().equals(instrument)
                    && one.get("quantity").textValue().equals(quantity)
                    && one.get("point").intValue() == point) {
                return one;
            }
        }
        throw new AssertionError("no result of " + instrument + ", " + quantity + ", " + point);
    }

    @Test
    void it_is_evaluated_without_remarks() throws IOException {
        assertEquals(0, said.code(), said.messages());
        assertFalse(said.messages().contains("remark"), said.messages());
        assertTrue(Files.exists(out.resolve("certificate-T-31.pdf")));
        assertTrue(Files.exists(out.resolve("certificate-M-08.pdf")));
    }

    @Test
    void the_lines_of_its_readme_are_printed() throws IOException {
        String readme = Files.readString(EXAMPLE.resolve("README.md"));
        String block = readme.substring(readme.indexOf("T-31        dew"), readme.lastIndexOf("```"));
        for (String line : block.split("\n")) {
            assertTrue(said.answer().contains(line), () -> line + " is not in\n" + said.answer());
        }
    }

    /**
     * How the readings were made is told in the README: T-31 0.4 % RH and 0.05 K too high, M-08 0.3 K of dew point. By the
     * slopes of worked-budgets.csv in result at 50 % RH (3.2972 % RH per K of dew point, -3.02804 % RH per K of air) that
     * is 0.4/3.2972 + 0.05·3.02804/3.2972 K, and 0.3·3.2972 % RH.
     */
    @Test
    void the_errors_that_were_put_in_are_found_within_their_uncertainty() throws IOException {
        JsonNode dew = result("T-31", "dew_point", 2);
        assertEquals(0.167, dew.get("error").doubleValue(), dew.get("U").doubleValue());
        assertEquals("water", dew.get("over").textValue());
        JsonNode humidity = result("M-08", "relative_humidity", 2);
        assertEquals(
                0.989, humidity.get("error").doubleValue(), humidity.get("U").doubleValue());
        assertEquals("ice", result("T-31", "dew_point", 1).get("over").textValue());
        assertEquals("ice", result("M-08", "dew_point", 1).get("over").textValue());
    }

    @Test
    void an_instant_that_lacks_the_temperature_is_left_out_of_what_is_derived() throws IOException {
        String readings = Files.readString(out.resolve("readings.csv"));
        String head = readings.lines().findFirst().orElseThrow();
        assertFalse(head.contains("T-31/dew_point"), "only what was shown is kept");
        assertTrue(readings.lines().anyMatch(line -> line.contains(",,")), "the gap is there");
    }
}
