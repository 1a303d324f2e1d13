// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.station.demo.HeadlessDemo;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Shows a whole calibration on a simulated bench. */
@Command(
        name = "demo",
        description = "Shows a calibration on the simulated bench that comes with the program: in a browser, or with"
                + " --headless as files.",
        mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    @Option(names = "--headless", description = "no pages; leave the results as files in the folder of --out")
    private boolean headless;

    @Option(names = "--out", paramLabel = "DIR", description = "where the files of --headless go")
    private @Nullable Path out;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "decides all that is drawn: ${DEFAULT-VALUE}")
    private long seed;

    @Override
    public Integer call() throws IOException {
        if (!headless) {
            throw new ParameterException(spec.commandLine(), "only --headless so far");
        }
        if (out == null) {
            throw new ParameterException(spec.commandLine(), "--headless needs --out DIR, where the files go");
        }
        ProgressLine progress = new ProgressLine(System.err, System.console());
        try {
            new HeadlessDemo(seed, progress::show).into(out);
        } finally {
            progress.end();
        }
        return Isohume.DONE;
    }
}
