// SPDX-License-Identifier: Apache-2.0
package isohume.station.demo;

import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.SqliteJournal;
import isohume.journal.StreamName;
import isohume.result.Results;
import isohume.run.Ending;
import isohume.run.Run;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.station.bench.Overheard;
import isohume.station.bench.RecordedRun;
import isohume.station.paper.Papers;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.function.Consumer;

/** A whole calibration as fast as it can, from a seed. The same seed gives the same files. */
public final class HeadlessDemo {
    /** When every headless demonstration takes place. */
    static final Instant START = Instant.parse("2026-03-02T07:00:00Z");

    private static final StreamName STREAM = new StreamName("run", "demo");

    private final long seed;
    private final Consumer<String> progress;

    /** Progress is one line of text at a time, meant to replace the one before. */
    public HeadlessDemo(long seed, Consumer<String> progress) {
        this.seed = seed;
        this.progress = progress;
    }

    /**
     * Leaves results, readings, certificates, the truth and the journal in a folder.
     *
     * @throws IOException when the folder cannot be written
     */
    public void into(Path folder) throws IOException {
        Files.createDirectories(folder);
        Path file = folder.resolve("journal.db");
        for (String left : new String[] {"journal.db", "journal.db-wal", "journal.db-shm"}) {
            Files.deleteIfExists(folder.resolve(left));
        }
        try (DemoBench bench = new DemoBench(seed, START);
                SqliteJournal journal = SqliteJournal.open(file, bench.simulated()::now)) {
            Truth truth = new Truth(bench.simulated(), bench.worksheet().job().items());
            carryOut(bench, new Overheard(journal, entry -> heard(entry, bench, truth)));
            Results results = new RecordedRun(journal, STREAM).results();
            progress.accept("writing results and certificates");
            Papers.put(folder.resolve("truth.json"), (truth + "\n").getBytes(StandardCharsets.UTF_8));
            Papers.write(results, bench.simulated().now(), folder);
        }
    }

    private static void carryOut(DemoBench bench, Journal journal) throws IOException {
        Ending ending = Run.begin(
                        journal,
                        STREAM,
                        bench.started(),
                        bench.open().bench(),
                        SimulatedTime.asFastAsItCan(bench.simulated()))
                .carryOut();
        if (ending != Ending.COMPLETED) {
            throw new IOException("the demonstration ended as " + ending);
        }
    }

    private void heard(Entry entry, DemoBench bench, Truth truth) {
        switch (RunNotation.decode(entry.fact())) {
            case RunFact.Recorded recorded ->
                truth.note(bench.worksheet().plan().point(recorded.point()));
            case RunFact.Entered entered -> progress.accept(line(entry.at(), entered, bench));
            default -> {}
        }
    }

    private static String line(Instant at, RunFact.Entered entered, DemoBench bench) {
        Duration passed = Duration.between(START, at);
        return String.format(
                Locale.ROOT,
                "point %d of %d, %s, after %d h %02d min",
                entered.point(),
                bench.worksheet().plan().points().size(),
                entered.phase().word(),
                passed.toHours(),
                passed.toMinutesPart());
    }
}
