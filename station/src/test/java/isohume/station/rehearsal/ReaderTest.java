// SPDX-License-Identifier: Apache-2.0
package isohume.station.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.journal.Journal;
import isohume.journal.MemoryJournal;
import isohume.journal.StreamName;
import isohume.result.PointResult;
import isohume.result.Recording;
import isohume.result.Results;
import isohume.run.Ending;
import isohume.run.Order;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.simulator.BenchParameters;
import isohume.station.bench.RecordedRun;
import isohume.station.job.Worksheet;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReaderTest {
    private static final Instant START = Instant.parse("2026-03-02T07:00:00Z");
    private static final StreamName RUN = new StreamName("run", "one");
    private static final String HANDHELD = "C-3310";

    private final Worksheet worksheet = Worksheet.read(Path.of("../examples/handheld/plan.yaml"));
    private final Journal journal = new MemoryJournal(() -> START);

    private List<TrueErrors.TrueError> carryOut(long seed) {
        try (Rehearsal rehearsal = Rehearsal.of(worksheet, BenchParameters.portable(), seed, START)) {
            Unattended run = new Unattended(rehearsal, journal, RUN, Order.STOP, (entry, fact) -> {});
            assertEquals(Ending.COMPLETED, run.carryOut(), String.join("; ", run.held()));
            return run.truth().all();
        }
    }

    @Test
    void a_display_is_read_as_often_as_the_plan_wants_at_every_point() {
        List<TrueErrors.TrueError> unused = carryOut(1);
        Map<String, Long> typed = journal.read(RUN, 0, Integer.MAX_VALUE).stream()
                .map(entry -> RunNotation.decode(entry.fact()))
                .filter(RunFact.Typed.class::isInstance)
                .map(RunFact.Typed.class::cast)
                .collect(Collectors.groupingBy(t -> t.point() + " " + t.channel(), Collectors.counting()));
        assertEquals(
                Map.of(
                        "1 C-3310/relative_humidity", 5L,
                        "1 C-3310/temperature", 5L,
                        "2 C-3310/relative_humidity", 5L,
                        "2 C-3310/temperature", 5L),
                typed);
        Recording first = new RecordedRun(journal, RUN).results().recordings().getFirst();
        assertEquals(
                5,
                first.rows().stream()
                        .filter(row -> row.shown().containsKey("C-3310/relative_humidity"))
                        .count());
    }

    /** The truth is the simulator's, which knows what it put into the instrument; two points and two quantities each. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_results_of_a_display_cover_the_truth(long seed) {
        List<TrueErrors.TrueError> truth = carryOut(seed);
        Results results = new RecordedRun(journal, RUN).results();
        assertEquals(4, results.of(HANDHELD).size());
        for (PointResult found : results.of(HANDHELD)) {
            double error = truth.stream()
                    .filter(t -> t.instrument().equals(HANDHELD)
                            && t.quantity() == found.quantity()
                            && t.point() == found.point().number())
                    .mapToDouble(TrueErrors.TrueError::error)
                    .findFirst()
                    .orElseThrow();
            double expanded = found.expanded();
            assertTrue(
                    Math.abs(found.error() - error) <= expanded,
                    seed + ": " + found.point() + " " + found.quantity() + " found " + found.error() + " ± " + expanded
                            + ", is " + error);
        }
    }
}
