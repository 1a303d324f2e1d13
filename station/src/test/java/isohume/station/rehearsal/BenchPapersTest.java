// SPDX-License-Identifier: Apache-2.0
package isohume.station.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Quantity;
import isohume.result.Reference;
import isohume.simulator.BenchParameters;
import isohume.simulator.MirrorSpecification;
import isohume.station.job.Worksheet;
import org.junit.jupiter.api.Test;

class BenchPapersTest {
    private static final BenchParameters PORTABLE = BenchParameters.portable();
    private static final String POINTS = "  - {temperature: 23, humidity: [20, 50]}\n";

    private static Reference mirror(BenchParameters bench) {
        return BenchPapers.worksheet(bench, "a bench", POINTS).job().references().stream()
                .filter(reference -> reference.quantity() == Quantity.DEW_POINT)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void certificates_state_what_a_seed_draws_from() {
        BenchParameters bench = PORTABLE.with(new MirrorSpecification(20, 0.02, 0, 0, 0.3, 0.07, 0.04, 0.01));
        assertEquals(0.3, mirror(bench).traceability().points().getFirst().expanded());
        assertEquals(0.07, mirror(bench).drift());
        assertEquals(0.01, mirror(bench).resolution());
        assertEquals(
                0.6,
                mirror(bench.withDrawn(2)).traceability().points().getLast().expanded());
        assertEquals(
                0.04,
                BenchPapers.worksheet(bench, "a bench", POINTS)
                        .job()
                        .characterisation()
                        .condensate());
    }

    @Test
    void a_bench_without_any_drawn_part_has_papers_too() {
        assertEquals(0, mirror(PORTABLE.withDrawn(0)).drift());
    }

    @Test
    void a_title_may_have_any_character() {
        Worksheet worksheet = BenchPapers.worksheet(PORTABLE, "a \"new\" bench: #1 \\", POINTS);
        assertEquals("a  new  bench: #1", worksheet.job().benchTitle().strip());
        assertEquals(2, worksheet.plan().points().size());
    }

    @Test
    void a_point_beyond_the_bench_is_refused() {
        String hot = "  - {temperature: 49, humidity: [90]}\n";
        var refused = assertThrows(RuntimeException.class, () -> BenchPapers.worksheet(PORTABLE, "a bench", hot));
        assertTrue(String.valueOf(refused.getMessage()).contains("cannot be reached"), refused.getMessage());
    }
}
