// SPDX-License-Identifier: Apache-2.0
package isohume.station.demo;

import isohume.journal.Entry;
import isohume.journal.SqliteJournal;
import isohume.journal.StreamName;
import isohume.result.Results;
import isohume.run.Ending;
import isohume.run.Order;
import isohume.run.RunFact;
import isohume.simulator.BenchParameters;
import isohume.station.bench.RecordedRun;
import isohume.station.job.Texts;
import isohume.station.job.Worksheet;
import isohume.station.paper.Papers;
import isohume.station.rehearsal.Rehearsal;
import isohume.station.rehearsal.Unattended;
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

    private final Worksheet worksheet;
    private final long seed;
    private final Consumer<String> progress;

    /** Progress is one line of text at a time, meant to replace the one before. */
    public HeadlessDemo(Worksheet worksheet, long seed, Consumer<String> progress) {
        this.worksheet = worksheet;
        this.seed = seed;
        this.progress = progress;
    }

    /** As {@link #HeadlessDemo(Worksheet, long, Consumer)}, of the usual worksheet. */
    public HeadlessDemo(long seed, Consumer<String> progress) {
        this(usual(), seed, progress);
    }

    /** The worksheet of a demonstration of which nobody said another. */
    public static Worksheet usual() {
        return Worksheet.read(Texts.packagedWith(HeadlessDemo.class), "plan.yaml");
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
        try (Rehearsal bench = Rehearsal.of(worksheet, BenchParameters.portable(), seed, START);
                SqliteJournal journal = SqliteJournal.open(file, bench.simulated()::now)) {
            Unattended run = new Unattended(bench, journal, STREAM, Order.STOP, this::follow);
            if (run.carryOut() != Ending.COMPLETED) {
                throw new IOException(
                        "the demonstration was held and nobody is there to ask: " + String.join("; ", run.held()));
            }
            Results results = new RecordedRun(journal, STREAM).results();
            progress.accept("writing results and certificates");
            String truth = Truth.document(run.truth(), worksheet.plan());
            Papers.put(folder.resolve("truth.json"), (truth + "\n").getBytes(StandardCharsets.UTF_8));
            Papers.write(results, bench.simulated().now(), folder);
        }
    }

    private void follow(Entry entry, RunFact fact) {
        if (fact instanceof RunFact.Entered entered) {
            Duration passed = Duration.between(START, entry.at());
            progress.accept(String.format(
                    Locale.ROOT,
                    "point %d of %d, %s, after %d h %02d min",
                    entered.point(),
                    worksheet.plan().points().size(),
                    entered.phase().word(),
                    passed.toHours(),
                    passed.toMinutesPart()));
        }
    }
}
