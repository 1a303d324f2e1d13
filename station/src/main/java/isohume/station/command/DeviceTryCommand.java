// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.device.Reading;
import isohume.device.driver.DeviceDescription;
import isohume.device.protocol.Protocol;
import isohume.device.trial.Trial;
import isohume.station.trial.Attempt;
import isohume.station.trial.Report;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads a device for a while and says what it gave, how fast, and what is wrong. */
@Command(
        name = "try",
        description =
                "Connects to the described device, shows what goes over the line and what it means, measures how fast"
                        + " and how finely it answers, and says in plain words what is wrong.",
        footer = {
            "",
            "Lines with > and < are the bytes that went there and came; a description can replay them.",
            "It ends with 1 if the last read did not give every value.",
            "Example: isohume device try probe.yaml --seconds 30"
        },
        mixinStandardHelpOptions = true)
final class DeviceTryCommand implements Callable<Integer> {
    private static final int MOST_SECONDS = 86_400;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    @Parameters(paramLabel = "DESCRIPTION", description = "the device's description, a YAML file")
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private Path file;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "10",
            description = "for how long, 1 to 86400: ${DEFAULT-VALUE}")
    private int seconds;

    @Option(names = "--json", description = "print what was found as JSON, without what goes over the line")
    private boolean json;

    @Override
    public Integer call() {
        if (seconds < 1 || seconds > MOST_SECONDS) {
            throw new ParameterException(spec.commandLine(), "from 1 to 86400 seconds are possible, was " + seconds);
        }
        DeviceDescription description = Protocol.read(file);
        PrintWriter out = spec.commandLine().getOut();
        Attempt.Listener listener = json ? Attempt.Listener.NONE : new Live(out);
        if (!json) {
            out.println(description.title() + " (" + description.id() + ") at " + description.place());
        }
        Report report = Report.of(
                Attempt.of(description, InstantSource.system(), listener).carryOut(Duration.ofSeconds(seconds)));
        if (json) {
            out.println(report.json(description));
        } else {
            print(report, out);
        }
        out.flush();
        return report.good() ? Isohume.DONE : Isohume.FAILED;
    }

    /** Shows all as it comes. */
    private record Live(PrintWriter out) implements Attempt.Listener {
        @Override
        public synchronized void moved(String line) {
            out.println(line);
        }

        @Override
        public synchronized void read(List<Reading> readings, Trial soFar) {
            readings.forEach(reading -> out.println("  " + Attempt.inWords(reading)));
            out.flush();
        }
    }

    private static void print(Report report, PrintWriter out) {
        out.println();
        report.latency()
                .ifPresent(took -> out.printf(
                        Locale.ROOT,
                        "%d reads; each took %.1f ms, the longest %.1f ms%n%n",
                        report.reads(),
                        took.median(),
                        took.longest()));
        TextTable table =
                new TextTable(List.of("channel", ">values", ">nothing", ">smallest step", "unit", ">changes every"));
        for (Report.Row one : report.channels()) {
            table.row(List.of(
                    one.channel().name(),
                    String.valueOf(one.values()),
                    String.valueOf(one.absent()),
                    one.step().map(step -> step.toPlainString()).orElse("-"),
                    one.channel().quantity().differenceUnit(),
                    one.secondsBetweenChanges()
                            .map(time -> String.format(Locale.ROOT, "%.2f s", time))
                            .orElse("-")));
        }
        table.write(out);
        out.println();
        List<String> findings = report.findings();
        findings.forEach(out::println);
        if (findings.isEmpty()) {
            out.println("Nothing is wrong.");
        }
    }
}
