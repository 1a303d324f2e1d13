// SPDX-License-Identifier: Apache-2.0
package isohume.station.demo;

import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.SqliteJournal;
import isohume.journal.StreamName;
import isohume.result.Results;
import isohume.run.Ending;
import isohume.run.Order;
import isohume.run.Phase;
import isohume.run.Run;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.station.Program;
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
            new Unattended(bench, journal, truth).carryOut();
            Results results = new RecordedRun(journal, STREAM).results();
            progress.accept("writing results and certificates");
            Papers.put(folder.resolve("truth.json"), (truth + "\n").getBytes(StandardCharsets.UTF_8));
            Papers.write(results, bench.simulated().now(), folder);
        }
    }

    /** The run with nobody beside it. */
    private final class Unattended {
        private final DemoBench bench;
        private final Truth truth;
        private final Run run;
        private String held = "";

        Unattended(DemoBench bench, Journal journal, Truth truth) {
            this.bench = bench;
            this.truth = truth;
            run = Run.begin(
                    new Overheard(journal, this::hear),
                    STREAM,
                    bench.worksheet().started(bench.worksheet().job().operator(), Program.title()),
                    bench.open().bench(),
                    SimulatedTime.asFastAsItCan(bench.simulated()));
        }

        void carryOut() throws IOException {
            if (run.carryOut() != Ending.COMPLETED) {
                throw new IOException("the demonstration was held and nobody is there to ask: " + held);
            }
        }

        private void hear(Entry entry) {
            switch (RunNotation.decode(entry.fact())) {
                case RunFact.Recorded recorded ->
                    truth.note(bench.worksheet().plan().point(recorded.point()));
                case RunFact.Entered entered -> follow(entry.at(), entered);
                default -> {}
            }
        }

        private void follow(Instant at, RunFact.Entered entered) {
            Duration passed = Duration.between(START, at);
            progress.accept(String.format(
                    Locale.ROOT,
                    "point %d of %d, %s, after %d h %02d min",
                    entered.point(),
                    bench.worksheet().plan().points().size(),
                    entered.phase().word(),
                    passed.toHours(),
                    passed.toMinutesPart()));
            if (entered.phase() == Phase.HELD) {
                held = entered.why();
                run.order(Order.STOP, "demonstration", held);
            }
        }
    }
}
