// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.station.job.Reckoning;
import isohume.station.job.Worksheet;
import isohume.station.paper.Papers;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** From readings in a file to results and certificates. */
@Command(
        name = "evaluate",
        description = "Evaluates readings that were taken elsewhere: errors, uncertainty budgets, verdicts and draft"
                + " certificates, by a plan and its bench.",
        footer = {
            "",
            "Leaves in DIR: summary.json, readings.csv and a certificate-ID.pdf for each instrument.",
            "Example: isohume evaluate --plan plan.yaml --readings readings.csv --out results"
        },
        mixinStandardHelpOptions = true)
final class EvaluateCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    @Option(
            names = "--plan",
            required = true,
            paramLabel = "PLAN.yaml",
            description = "the plan; it names the bench, the job and the instruments")
    @SuppressWarnings("NullAway.Init")
    private Path plan;

    @Mixin
    private ReadingsOptions readings = new ReadingsOptions();

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "where the results go")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(names = "--json", description = "print the summary as JSON instead of a table")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        Worksheet worksheet = Worksheet.read(plan);
        Reckoning reckoning = readings.reckoning(worksheet, plan.resolveSibling(""), spec);
        Papers.write(
                reckoning.results(), reckoning.remarks(), InstantSource.system().instant(), out);
        PrintWriter answer = spec.commandLine().getOut();
        if (json) {
            answer.print(new String(Papers.summary(reckoning.results(), reckoning.remarks()), StandardCharsets.UTF_8));
            answer.println();
        } else {
            ResultTable.write(reckoning.results(), answer);
        }
        PrintWriter messages = spec.commandLine().getErr();
        reckoning.remarks().forEach(remark -> messages.println("remark: " + remark));
        messages.println("results and draft certificates are in " + out);
        return Isohume.DONE;
    }
}
