// SPDX-License-Identifier: Apache-2.0
package isohume.station.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import isohume.journal.Journal;
import isohume.journal.MemoryJournal;
import isohume.journal.StreamName;
import isohume.result.Results;
import isohume.run.Ending;
import isohume.run.Order;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.simulator.BenchParameters;
import isohume.station.bench.RecordedRun;
import isohume.station.rehearsal.BenchPapers;
import isohume.station.rehearsal.Rehearsal;
import isohume.station.rehearsal.Unattended;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalDeskTest {
    private static final Instant START = Instant.parse("2026-03-02T07:00:00Z");
    private static final StreamName RUN = new StreamName("run", "one");

    @TempDir
    Path folder;

    @Test
    void results_are_those_of_the_records_that_stand_and_not_of_one_that_was_withdrawn() {
        InstantSource clock = InstantSource.fixed(START);
        Journal journal = new MemoryJournal(clock);
        carryOutOnePoint(journal);
        JournalDesk desk = new JournalDesk(journal, Optional.empty(), folder, clock, ZoneOffset.UTC, "");
        Results first = desk.results("one").orElseThrow();
        assertSame(first, desk.results("one").orElseThrow(), "evaluated once");

        RunFact.Recorded record =
                new RecordedRun(journal, RUN).course().recorded().getFirst();
        RunFact.Recorded later =
                new RunFact.Recorded(record.point(), record.first() + 3, record.last(), record.toCome());
        journal.append(RUN, RunNotation.encode(new RunFact.Withdrawn(record.point(), "an instrument was frozen")));
        journal.append(RUN, RunNotation.encode(later));

        Results second = desk.results("one").orElseThrow();
        assertEquals(1, second.recordings().size());
        assertNotEquals(
                first.recordings().getFirst().rows(),
                second.recordings().getFirst().rows());
    }

    @Test
    void a_point_that_was_taken_again_stands_behind_those_that_were_recorded_before_it() {
        Journal journal = new MemoryJournal(InstantSource.fixed(START));
        carryOut(journal, "40, 50");
        List<RunFact.Recorded> records = new RecordedRun(journal, RUN).course().recorded();
        RunFact.Recorded first = records.getFirst();
        journal.append(RUN, RunNotation.encode(new RunFact.Withdrawn(first.point(), "an instrument was frozen")));
        RunFact.Recorded last = records.getLast(); // its readings stand for those of the second try
        journal.append(
                RUN,
                RunNotation.encode(new RunFact.Recorded(first.point(), last.first() + 1, last.last(), last.toCome())));

        List<Integer> points = new RecordedRun(journal, RUN)
                .results().recordings().stream()
                        .map(recording -> recording.point().number())
                        .toList();
        assertEquals(List.of(2, 1), points);
    }

    private static void carryOutOnePoint(Journal journal) {
        carryOut(journal, "40");
    }

    private static void carryOut(Journal journal, String humidities) {
        BenchParameters bench = BenchParameters.portable();
        var worksheet =
                BenchPapers.worksheet(bench, "a bench", "  - {temperature: 23, humidity: [" + humidities + "]}\n");
        try (Rehearsal rehearsal = Rehearsal.of(worksheet, bench, 1, START)) {
            assertEquals(
                    Ending.COMPLETED,
                    new Unattended(rehearsal, journal, RUN, Order.STOP, (entry, fact) -> {}).carryOut());
        }
    }
}
