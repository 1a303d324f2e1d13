// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import isohume.result.Job;
import isohume.result.PointResult;
import isohume.result.Results;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

class FilesTest {
    private final Results results = SampleJob.results(SampleJob.points(1));

    @Test
    void readings_have_a_column_for_each_channel_with_its_unit() throws IOException {
        assertEquals(
                "time,point,deposit,dew_point [\u00B0C],temperature [\u00B0C],pressure [Pa],mirror_pressure [Pa],"
                        + "A-1042/relative_humidity [% RH],A-1042/temperature [\u00B0C],"
                        + "A-1043/relative_humidity [% RH],A-1043/temperature [\u00B0C],"
                        + "A-1044/relative_humidity [% RH],A-1044/temperature [\u00B0C]",
                csv(results).getFirst());
    }

    @Test
    void every_moment_is_one_line_in_utc_and_a_gap_is_empty() throws IOException {
        List<String> lines = csv(results);
        assertEquals(1 + 15 * 10, lines.size());
        assertEquals("2026-03-03T07:20:00Z,1,ice,11.5,23,100325.5,100290,10.5,23.1,10.5,23.1,10.5,23.1", lines.get(1));
        assertEquals("2026-03-03T07:22:00Z,1,ice,11.5,23,100325.5,100290,10.54,,10.54,23.1,10.54,23.1", lines.get(5));
    }

    @Test
    void an_identification_with_a_comma_stays_one_column() throws IOException {
        Job job = SampleJob.job(Job.Decision.NONE, List.of(SampleJob.item("A-1,\"x\"", "probe", "1")));
        String head = csv(SampleJob.results(job, SampleJob.points(1))).getFirst();
        assertTrue(head.contains(",\"A-1,\"\"x\"\"/temperature [\u00B0C]\""), head);
    }

    @Test
    void nothing_that_is_written_depends_on_language_or_time_zone() throws IOException {
        Locale language = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        Certificate certificate = SampleJob.authorised();
        String usual = everything(certificate);
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            assertEquals(usual, everything(certificate));
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertEquals(usual, everything(certificate));
        } finally {
            Locale.setDefault(language);
            TimeZone.setDefault(zone);
        }
    }

    private static String everything(Certificate certificate) throws IOException {
        StringWriter text = new StringWriter();
        ResultsJson.write(certificate.results(), text);
        ReadingsCsv.write(certificate.results(), text);
        return text + new CertificatePage(certificate, new Lettering()).xhtml();
    }

    @Test
    void results_as_data_keep_every_digit() throws IOException {
        JsonNode root = json(results);
        assertEquals("% RH", root.at("/units/relative_humidity/value").asText());
        assertEquals("K", root.at("/units/temperature/difference").asText());
        assertEquals(results.points().size(), root.get("points").size());
        for (int i = 0; i < results.points().size(); i++) {
            PointResult point = results.points().get(i);
            JsonNode node = root.get("points").get(i);
            assertEquals(point.instrument(), node.get("instrument").asText());
            assertEquals(point.reference(), node.get("reference").asDouble());
            assertEquals(point.error(), node.get("error").asDouble());
            assertEquals(point.expanded(), node.get("U").asDouble());
            assertEquals(
                    point.budget().contributions().size(), node.get("budget").size());
            assertTrue(node.at("/budget/0/nu").isNull()); // infinite
            JsonNode second = node.get("monte_carlo");
            assertEquals(
                    point.propagation().validatesBudget(), second.get("agrees").asBoolean());
            assertEquals(point.propagation().found().low(), second.get("low").asDouble());
            assertEquals(
                    point.propagation().settings().seed(), second.get("seed").asLong());
            assertEquals(point.propagation().trials(), second.get("trials").asInt());
            assertEquals(point.coverageFactor(), node.get("k").asDouble());
        }
        assertEquals(23.0, root.at("/points/0/set/temperature").asDouble());
        assertEquals("ice", root.at("/points/0/conditions/deposit").asText());
        assertEquals("conforms", root.at("/points/0/verdict").asText());
    }

    @Test
    void the_pdf_carries_the_results_of_its_own_instrument_alone() throws IOException {
        Certificate certificate = SampleJob.authorised();
        try (PDDocument document =
                Loader.loadPDF(Printed.of(certificate, "authorised").array())) {
            var files =
                    document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
            byte[] attached = Objects.requireNonNull(files.get("results.json"))
                    .getEmbeddedFileUnicode()
                    .toByteArray();
            StringWriter expected = new StringWriter();
            ResultsJson.write(certificate.results(), expected);
            assertArrayEquals(expected.toString().getBytes(StandardCharsets.UTF_8), attached);
            for (JsonNode point : new ObjectMapper().readTree(attached).get("points")) {
                assertEquals("A-1042", point.get("instrument").asText());
            }
        }
    }

    @Test
    void the_pdf_is_dated_with_its_issue_and_says_its_language_and_title() throws IOException {
        try (PDDocument document =
                Loader.loadPDF(Printed.of(SampleJob.authorised(), "authorised").array())) {
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertEquals(
                    "Calibration certificate 2026-0147",
                    document.getDocumentInformation().getTitle());
            assertEquals(
                    SampleJob.ISSUED,
                    document.getDocumentInformation().getCreationDate().toInstant());
            String xmp = new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertTrue(xmp.contains("<xmp:CreateDate>2026-03-05T13:20:00Z</xmp:CreateDate>"), xmp);
        }
    }

    private static List<String> csv(Results results) throws IOException {
        StringWriter text = new StringWriter();
        ReadingsCsv.write(results, text);
        return text.toString().lines().toList();
    }

    private static JsonNode json(Results results) throws IOException {
        StringWriter text = new StringWriter();
        ResultsJson.write(results, text);
        return new ObjectMapper().readTree(text.toString());
    }
}
