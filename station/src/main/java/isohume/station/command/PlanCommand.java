// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.journal.SqliteJournal;
import isohume.run.order.Lesson;
import isohume.station.plan.PastRuns;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What can be said of a plan before anything moves. */
@Command(
        name = "plan",
        description = "Says what a plan takes on its bench, and puts its points in order, before anything moves.",
        subcommands = {PlanCheck.class, PlanOrder.class},
        synopsisSubcommandLabel = "COMMAND",
        mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getOut());
        return Isohume.DONE;
    }

    /** The plan, and where the times are learned from. */
    static final class Given {
        @Parameters(paramLabel = "PLAN.yaml", description = "the plan; it names its bench")
        @SuppressWarnings("NullAway.Init") // picocli sets it
        Path plan;

        @Option(
                names = "--data",
                paramLabel = "DIR",
                description = "folder whose journal.db has past runs of the bench; the times are learned from them")
        private @Nullable Path data;

        List<Lesson> lessons(String bench) throws IOException {
            if (data == null) {
                return List.of();
            }
            Path file = Files.isDirectory(data) ? data.resolve("journal.db") : data;
            if (!Files.exists(file)) {
                throw new IOException("there is no journal at " + file + "; name the folder that has journal.db in it");
            }
            try (SqliteJournal journal = SqliteJournal.open(file, InstantSource.system())) {
                return new PastRuns(journal).lessons(bench);
            }
        }
    }
}
