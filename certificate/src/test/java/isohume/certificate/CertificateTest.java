// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.result.Results;
import java.util.List;
import org.junit.jupiter.api.Test;

class CertificateTest {
    private final Results results = SampleJob.results(SampleJob.points(1));

    @Test
    void holds_only_what_belongs_to_its_instrument() {
        Certificate certificate = SampleJob.draft();
        assertEquals(30, certificate.points().size());
        assertTrue(certificate.points().stream().allMatch(p -> p.instrument().equals("A-1042")));
        assertTrue(
                certificate.hysteresis().stream().allMatch(h -> h.instrument().equals("A-1042")));
        assertEquals(15, certificate.recordings().size());
    }

    @Test
    void an_instrument_that_the_job_does_not_have_is_refused_by_name() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> certificate(results, "B-1", "1"));
        assertTrue(String.valueOf(refused.getMessage()).contains("B-1"), refused.getMessage());
    }

    @Test
    void without_results_or_without_a_number_there_is_no_certificate() {
        Results empty = new Results(results.job(), results.recordings(), List.of(), List.of(), List.of());
        assertThrows(IllegalArgumentException.class, () -> certificate(empty, "A-1042", "1"));
        assertThrows(IllegalArgumentException.class, () -> certificate(results, "A-1042", " "));
    }

    private static Certificate certificate(Results from, String item, String number) {
        return Certificate.of(from, item, number, SampleJob.ISSUED, SampleJob.ZONE, "Isohume 0");
    }
}
