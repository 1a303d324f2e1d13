// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.result.Job;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What ISO/IEC 17025:2017 asks of a calibration certificate, clause by clause, found in the text of the PDF. The clauses
 * are those of the standard's 7.8.2.1, 7.8.4.1 and 7.8.6.2; what is looked for under each is the sample's own data.
 */
class ChecklistTest {
    private static final Map<String, List<String>> CLAUSES = new TreeMap<>(Map.ofEntries(
            Map.entry("7.8.2.1 a title", List.of("Calibration certificate")),
            Map.entry(
                    "7.8.2.1 b name and address of the laboratory",
                    List.of("Calibration Laboratory Hollerbach", "Am Sudhaus 4", "9999 Niederwasser")),
            Map.entry(
                    "7.8.2.1 c place of performance",
                    List.of("Customer\u2019s site: Oberwasser, building 3, room 1.12")),
            Map.entry(
                    "7.8.2.1 d identification on all parts and end mark",
                    List.of("Certificate 2026-0147", "Page 1 of", "\u2014 End of certificate 2026-0147 \u2014")),
            Map.entry(
                    "7.8.2.1 e customer",
                    List.of("Brunnwerk Pharma-Abf\u00FCllung", "Quality control, Ms Tannhofer", "9998 Oberwasser")),
            Map.entry("7.8.2.1 f method", List.of("HP-07, issue 4")),
            Map.entry(
                    "7.8.2.1 g item and its condition",
                    List.of(
                            "probe and transmitter, Feuchtler HX 20",
                            "A-1042",
                            "F20-1042-77",
                            "clean, filter undamaged, no condensation marks")),
            Map.entry("7.8.2.1 h date of receipt", List.of("Date of receipt 2026-02-26")),
            Map.entry("7.8.2.1 i dates of performance", List.of("2026-03-03T08:20:00+01:00 to 17:44:30")),
            Map.entry("7.8.2.1 j date of issue", List.of("Date of issue 2026-03-05T14:20:00+01:00")),
            Map.entry(
                    "7.8.2.1 l results relate only to the items", List.of("The results relate only to the instrument")),
            Map.entry(
                    "7.8.2.1 m results with units",
                    List.of("% RH", "\u00B0C", "3 \u25B2 ascending 23.02 49.94 50.59 +0.65")),
            Map.entry("7.8.2.1 n deviations from the method", List.of("No additions to, deviations or exclusions")),
            Map.entry("7.8.2.1 o who authorised it", List.of("Authorised by Ilse Marwitz")),
            Map.entry("7.8.2.1 note: only in full", List.of("not be reproduced except in full")),
            Map.entry(
                    "7.8.4.1 a uncertainty in the unit of the result",
                    List.of(
                            "about 95 %",
                            "GUM, JCGM 100:2008", "coverage factor k", "+0.65 0.67 2.00", "Monte Carlo method")),
            Map.entry(
                    "7.8.4.1 b conditions",
                    List.of(
                            "23.02 \u221210.23 ice 10.1 1003.3 10 7.4 / 7.4",
                            "ice, decided by the mirror\u2019s own report, at points 1, 9",
                            "Conditions in the room: 23.1 \u00B0C, 41 % RH, 1003 hPa",
                            "chamber study CS-2026-02",
                            "Sonntag 1990",
                            "over liquid water at all temperatures",
                            "ITS-90")),
            Map.entry(
                    "7.8.4.1 c traceability",
                    List.of(
                            "DP-25-1180",
                            "National Institute",
                            "2025-09-30",
                            "2026-09-30",
                            "0.08 to 0.12 K",
                            "(k = 2.00)")),
            Map.entry("7.8.4.1 d state before adjustment", List.of("As found: results before any adjustment")),
            Map.entry("7.8.4.1 e and 7.8.6.2 a to which results it applies", List.of("applied to points 1 to 15")),
            Map.entry(
                    "7.8.6.2 b which specification",
                    List.of("\u00B1(1 % RH + 0.01 \u00D7 |reading|); specification from: maker\u2019s data sheet")),
            Map.entry(
                    "7.8.6.2 c decision rule and its risk",
                    List.of("guard band w = U", "does not exceed 2.5 %", "conforms on the guard band\u2019s edge")),
            Map.entry("common practice, no source: software and version", List.of("Isohume 0.1.0"))));

    @TestFactory
    Stream<DynamicTest> the_pdf_holds_what_the_standard_asks_for() throws IOException {
        String text = Printed.of(SampleJob.authorised(), "authorised").text();
        return CLAUSES.entrySet().stream()
                .flatMap(clause -> clause.getValue().stream()
                        .map(words -> dynamicTest(
                                clause.getKey() + ": " + words, () -> assertTrue(text.contains(words), text))));
    }

    @Test
    void simple_acceptance_names_its_own_rule_and_risk() throws IOException {
        String text = text(Job.Decision.SIMPLE_ACCEPTANCE);
        assertTrue(text.contains("simple acceptance; the acceptance limit equals the tolerance (w = 0)"), text);
        assertTrue(text.contains("up to 50 %"), text);
    }

    @Test
    void without_a_decision_nothing_is_said_to_conform() throws IOException {
        String text = text(Job.Decision.NONE);
        assertTrue(text.contains("No statement of conformity was asked for."), text);
        assertTrue(!text.contains("conforms") && !text.contains("Tolerance"), text);
    }

    @Test
    void a_reference_past_its_date_is_named_among_the_deviations() throws IOException {
        Certificate certificate = SampleJob.late();
        String text = Printed.of(certificate, "late").text();
        assertTrue(text.contains("DP-25-1180 of reference R-01 was due on 2026-01-31, before the readings"), text);
    }

    private static String text(Job.Decision decision) throws IOException {
        Job job = SampleJob.job(decision, SampleJob.items());
        Certificate certificate = Certificate.of(
                SampleJob.results(job, SampleJob.points(1)), "A-1044", "1", SampleJob.ISSUED, SampleJob.ZONE, "0");
        return Printed.of(certificate, "decision-" + decision).text();
    }
}
