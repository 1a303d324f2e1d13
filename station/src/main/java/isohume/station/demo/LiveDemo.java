// SPDX-License-Identifier: Apache-2.0
package isohume.station.demo;

import isohume.journal.SqliteJournal;
import isohume.journal.StreamName;
import isohume.simulator.BenchParameters;
import isohume.station.bench.Workplace;
import isohume.station.desk.JournalDesk;
import isohume.station.imported.ImportedFiles;
import isohume.station.imported.Intake;
import isohume.station.imported.Photos;
import isohume.station.job.Worksheet;
import isohume.station.rehearsal.Rehearsal;
import isohume.station.rehearsal.SimulatedDisplays;
import isohume.station.rehearsal.SimulatedTime;
import isohume.station.web.Web;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** The simulated bench at work behind the pages, some times faster than the clock on the wall. */
public final class LiveDemo {
    private final Worksheet worksheet;
    private final Path data;
    private final long seed;
    private final double speed;

    /**
     * A demonstration.
     *
     * @param data the folder that keeps its journal
     * @param speed how many times as fast as real time
     */
    public LiveDemo(Worksheet worksheet, Path data, long seed, double speed) {
        this.worksheet = worksheet;
        this.data = data;
        this.seed = seed;
        this.speed = speed;
    }

    /**
     * Begins a run and serves until the program is told to end.
     *
     * @throws IOException when the folder cannot be made
     */
    public void serve(String host, int port, Consumer<String> ready) throws IOException {
        Files.createDirectories(data);
        InstantSource wall = InstantSource.system();
        Instant start = afterEverythingIn(data.resolve("journal.db"), wall.instant());
        try (Rehearsal bench = Rehearsal.of(worksheet, BenchParameters.portable(), seed, start);
                SqliteJournal journal = SqliteJournal.open(data.resolve("journal.db"), bench.simulated()::now);
                Workplace workplace = new Workplace(
                        journal,
                        bench.worksheet(),
                        bench.open(),
                        SimulatedTime.paced(bench.simulated(), speed, wall))) {
            int closed = workplace.closeCutOff();
            if (closed > 0) {
                ready.accept(
                        closed == 1
                                ? "a run that was cut off was closed; it can be taken up again from its page"
                                : closed + " runs that were cut off were closed");
            }
            Optional<StreamName> begun = workplace.begin(bench.worksheet().job().operator());
            String remark = String.format(
                    Locale.ROOT, "Demonstration: a simulated bench, %.0f times as fast as real time.", speed);
            SimulatedDisplays displays = new SimulatedDisplays(bench.simulated(), worksheet.displays());
            JournalDesk desk = new JournalDesk(
                            journal,
                            Optional.of(workplace),
                            data.resolve("plans"),
                            bench.simulated()::now,
                            ZoneId.systemDefault(),
                            () -> (remark + " " + displays.inWords()).strip())
                    .taking(new Intake(data, new ImportedFiles(data, journal)))
                    .keeping(new Photos(data));
            Web.serve(
                    desk,
                    host,
                    port,
                    address -> ready.accept("Isohume is at " + address
                            + begun.map(run -> ", run " + run.id() + " is at work")
                                    .orElse("")));
        }
    }

    /** Simulated time ran ahead of the wall's; the next demonstration goes on behind the last one's facts. */
    private static Instant afterEverythingIn(Path file, Instant now) {
        if (!Files.exists(file)) {
            return now;
        }
        Instant latest = now;
        try (SqliteJournal journal = SqliteJournal.open(file, () -> now)) {
            for (StreamName stream : journal.streams("run")) {
                long last = journal.last(stream);
                Instant at = journal.read(stream, last - 1, 1).getFirst().at();
                latest = at.isAfter(latest) ? at : latest;
            }
        }
        return latest;
    }
}
