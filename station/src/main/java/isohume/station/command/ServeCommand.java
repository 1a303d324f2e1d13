// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.device.driver.DeviceDescription;
import isohume.device.protocol.Protocol;
import isohume.journal.SqliteJournal;
import isohume.run.lease.Lease;
import isohume.station.bench.Leases;
import isohume.station.bench.OpenBench;
import isohume.station.bench.WallTime;
import isohume.station.bench.Workplace;
import isohume.station.desk.JournalDesk;
import isohume.station.imported.ImportedFiles;
import isohume.station.imported.Intake;
import isohume.station.imported.Photos;
import isohume.station.job.Texts;
import isohume.station.job.Worksheet;
import isohume.station.web.Web;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Serves the pages over a data folder, with a bench beside it when a plan names one. */
@Command(
        name = "serve",
        description = "Serves the pages. With a plan, its bench is connected and the plan can be begun from the Bench"
                + " page; without one, what the data folder holds can be read.",
        mixinStandardHelpOptions = true)
@SuppressWarnings("NullAway.Init") // picocli fills the fields
final class ServeCommand implements Callable<Integer> {
    private static final Duration PATIENCE = Duration.ofMillis(300); // a poll comes each second at most

    @Mixin
    private Address address;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            defaultValue = "data",
            description = "folder that keeps the journal: ${DEFAULT-VALUE}")
    private Path data;

    @Option(names = "--plan", paramLabel = "PLAN.yaml", description = "the plan to carry out, with its bench")
    private @Nullable Path plan;

    @Override
    public Integer call() throws IOException {
        address.checkFree();
        Files.createDirectories(data);
        InstantSource clock = InstantSource.system();
        Optional<Worksheet> worksheet = Optional.ofNullable(plan).map(Worksheet::read);
        try (SqliteJournal journal = SqliteJournal.open(data.resolve("journal.db"), clock)) {
            if (worksheet.isEmpty() || plan == null) {
                serve(journal, Optional.empty(), clock);
                return Isohume.DONE;
            }
            Texts texts = Texts.in(
                    Optional.ofNullable(plan.toAbsolutePath().getParent()).orElseThrow());
            Function<String, DeviceDescription> descriptions = name -> Protocol.parse(texts.text(name), name);
            Optional<Lease> lease = worksheet.get().devices().stream()
                    .findFirst()
                    .map(chamber -> Leases.of(descriptions.apply(chamber), journal, clock));
            OpenBench bench = OpenBench.abreast(worksheet.get(), descriptions, PATIENCE, clock);
            try (Workplace workplace = new Workplace(journal, worksheet.get(), bench, new WallTime(clock), lease)) {
                workplace.watchRoom(() -> data.toFile().getUsableSpace());
                int closed = workplace.closeCutOff();
                if (closed > 0) {
                    System.err.println(closed + " run(s) that were cut off were closed, and the chamber asked to rest");
                }
                serve(journal, Optional.of(workplace), clock);
            }
        }
        return Isohume.DONE;
    }

    private void serve(SqliteJournal journal, Optional<Workplace> workplace, InstantSource clock) {
        JournalDesk desk = new JournalDesk(journal, workplace, data.resolve("plans"), clock, ZoneId.systemDefault(), "")
                .taking(new Intake(data, new ImportedFiles(data, journal)))
                .keeping(new Photos(data));
        Web.serve(desk, address.host(), address.port(), at -> System.err.println("Isohume is at " + at));
    }
}
