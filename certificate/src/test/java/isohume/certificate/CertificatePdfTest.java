// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.result.Item;
import isohume.result.Job;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

class CertificatePdfTest {
    @ParameterizedTest
    @EnumSource(
            value = PDFAFlavour.class,
            names = {"PDFA_3_A", "PDFA_3_U", "PDFUA_1"})
    void conforms_to_the_archive_and_accessibility_standards_as_verapdf_reads_them(PDFAFlavour flavour)
            throws Exception {
        Printed printed = Printed.of(SampleJob.authorised(), "authorised");
        assertEquals(new TreeSet<String>(), printed.faults(flavour));
    }

    @Test
    void the_same_certificate_gives_the_same_bytes() throws Exception {
        byte[] first = Printed.of(SampleJob.authorised(), "authorised").array();
        assertArrayEquals(
                first, Printed.of(SampleJob.authorised(), "authorised").array());
    }

    @Test
    void number_and_page_stand_on_every_page_and_the_end_is_marked_once() throws Exception {
        List<String> pages = Printed.of(SampleJob.authorised(), "authorised").pages();
        for (int i = 0; i < pages.size(); i++) {
            assertTrue(pages.get(i).contains("Certificate 2026-0147"), pages.get(i));
            assertTrue(pages.get(i).contains("Page " + (i + 1) + " of " + pages.size()), pages.get(i));
            assertFalse(pages.get(i).contains("DRAFT"), pages.get(i));
            assertEquals(i == pages.size() - 1, pages.get(i).contains("\u2014 End of certificate 2026-0147 \u2014"));
        }
    }

    @Test
    void a_draft_says_so_on_every_page() throws Exception {
        for (String page : Printed.of(SampleJob.draft(), "draft").pages()) {
            assertTrue(page.contains("DRAFT, not authorised"), page);
        }
    }

    @Test
    void sixty_points_run_over_pages_and_each_page_repeats_the_head_of_the_table() throws Exception {
        Certificate sixty = Certificate.of(
                SampleJob.results(SampleJob.points(4)), "A-1043", "2026-0148", SampleJob.ISSUED, SampleJob.ZONE, "0");
        Printed printed = Printed.of(sixty, "sixty");
        int withRows = 0;
        for (String page : printed.pages()) {
            if (page.contains("\u25B2 ascending")) {
                withRows++;
                assertTrue(page.contains("Reference Reading Error"), page);
            }
        }
        assertTrue(withRows >= 3, withRows + " pages with results");
        assertEquals(new TreeSet<String>(), printed.faults(PDFAFlavour.PDFA_3_A));
        assertEquals(new TreeSet<String>(), printed.faults(PDFAFlavour.PDFUA_1));
    }

    @Test
    void text_from_outside_is_printed_and_never_obeyed() throws Exception {
        String hostile =
                "<script>alert(1)</script> & ]]> \"quoted\" &lt; {{x}} \u0394\u03C4 \u0416\u0438 \u4E2D\u6587 \u202Eabc\u0001"
                        + " \uD83D\uDE00 e\u0301 \uD800";
        Item item = SampleJob.item("A-1042", hostile + " " + "W".repeat(400), "1");
        Job job = SampleJob.job(Job.Decision.GUARD_BAND_FOUR_ANSWERS, List.of(item));
        Certificate certificate = Certificate.of(
                        SampleJob.results(job, SampleJob.points(1)),
                        "A-1042",
                        "<b>&\u4E2D" + "9".repeat(60),
                        SampleJob.ISSUED,
                        SampleJob.ZONE,
                        "0")
                .withRemarks(List.of(hostile));
        Printed printed = Printed.of(certificate, "hostile");
        String text = printed.text();
        assertTrue(
                text.contains("<script>alert(1)</script> & ]]> \"quoted\" &lt; {{x}} \u0394\u03C4 \u0416\u0438"
                        + " [U+4E2D][U+6587] [U+202E]abc[U+0001] [U+1F600] \u00E9 [U+D800]"),
                text);
        assertEquals(new TreeSet<String>(), printed.faults(PDFAFlavour.PDFA_3_A));
        assertEquals(new TreeSet<String>(), printed.faults(PDFAFlavour.PDFUA_1));
    }
}
