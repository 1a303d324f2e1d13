// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import isohume.station.paper.SelfCheck;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ValidateCommandTest {
    @TempDir
    Path folder;

    @Test
    void every_published_figure_agrees_on_this_machine_and_the_report_says_so() throws IOException {
        Path report = folder.resolve("new").resolve("validation.pdf");
        Said said = Said.by("validate", "--json", "--out", report);
        assertEquals(0, said.code(), said.messages());
        JsonNode tree = new ObjectMapper().readTree(said.answer());
        assertTrue(tree.get("holds").booleanValue());
        int expected = isohume.moistair.PublishedChecks.all().size()
                + isohume.uncertainty.published.PublishedChecks.all().size();
        assertEquals(expected, tree.get("figures").size());
        assertTrue(tree.get("machine").get("program").textValue().startsWith("Isohume"));
        try (var pdf = Loader.loadPDF(report.toFile())) {
            String text = new PDFTextStripper().getText(pdf);
            assertTrue(text.contains(expected + " of " + expected + " figures agree"), text);
        }
    }

    @Test
    void a_figure_that_cannot_be_computed_or_differs_does_not_hold() {
        SelfCheck check = new SelfCheck(
                Map.of(),
                Instant.EPOCH,
                List.of(
                        new SelfCheck.Line("none", "", 1, "", 0.1, Double.NaN),
                        new SelfCheck.Line("off", "", 1, "", 0.1, 1.2),
                        new SelfCheck.Line("good", "", 1, "", 0.1, 1.05)));
        assertFalse(check.holds());
        assertEquals(2, check.failed());
        assertTrue(check.json().contains("\"found\" : null"));
    }

    @Test
    void a_report_can_be_plain_text() throws IOException {
        Path report = folder.resolve("validation.txt");
        assertEquals(0, Said.by("validate", "--out", report).code());
        assertTrue(Files.readString(report, StandardCharsets.UTF_8).contains("IAPWS R14-08"));
    }

    @Test
    void a_report_of_an_unknown_kind_is_wrong_use() {
        assertEquals(
                2, Said.by("validate", "--out", folder.resolve("report.doc")).code());
    }
}
