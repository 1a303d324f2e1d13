// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.station.demo.HeadlessDemo;
import isohume.station.demo.LiveDemo;
import isohume.station.job.Worksheet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
@SuppressWarnings("NullAway.Init") // picocli fills the fields
final class DemoCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private Address address;

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

    @Option(
            names = "--speed",
            paramLabel = "X",
            defaultValue = "60",
            description = "times as fast as real time, 1 to 1000: ${DEFAULT-VALUE}")
    private double speed;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            defaultValue = "data/demo",
            description = "folder that keeps the journal of the demonstration with pages: ${DEFAULT-VALUE}")
    private Path data;

    @Option(
            names = "--plan",
            paramLabel = "PLAN.yaml",
            description = "another plan for the simulated bench, whose devices are named as its own are: chamber.yaml,"
                    + " mirror.yaml, thermometer.yaml, A-1042.yaml, B-2077.yaml, C-3310.yaml")
    private @Nullable Path plan;

    @Override
    public Integer call() throws IOException {
        return headless ? headless() : live();
    }

    private int headless() throws IOException {
        if (out == null) {
            throw new ParameterException(spec.commandLine(), "--headless needs --out DIR, where the files go");
        }
        ProgressLine progress = new ProgressLine(System.err, System.console());
        try {
            new HeadlessDemo(worksheet(), seed, progress::show).into(out);
        } finally {
            progress.end();
        }
        return Isohume.DONE;
    }

    private Worksheet worksheet() {
        return plan == null ? HeadlessDemo.usual() : Worksheet.read(plan);
    }

    private int live() throws IOException {
        if (!(speed >= 1 && speed <= 1000)) {
            throw new ParameterException(spec.commandLine(), "--speed goes from 1 to 1000, was " + speed);
        }
        address.checkFree();
        new LiveDemo(worksheet(), data, seed, speed).serve(address.host(), address.port(), System.err::println);
        return Isohume.DONE;
    }
}
