// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.station.Program;
import isohume.station.paper.Papers;
import isohume.station.paper.SelfCheck;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Checks the program against published figures where it runs. */
@Command(
        name = "validate",
        description = "Computes published figures on this machine and compares them with print: formulas of moist air,"
                + " uncertainty, conformity, statistics.",
        footer = {"", "Example: isohume validate --out validation.txt"},
        mixinStandardHelpOptions = true)
final class ValidateCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "leave a report as well: .pdf, .txt or .json, as the name ends")
    private @Nullable Path out;

    @Option(names = "--json", description = "print the report as JSON")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        String ending = out == null ? "" : ending(out);
        SelfCheck check = SelfCheck.run(machine(), InstantSource.system().instant());
        if (out != null) {
            Path folder = out.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            Papers.put(
                    out,
                    switch (ending) {
                        case "pdf" -> check.pdf();
                        case "json" -> check.json().getBytes(StandardCharsets.UTF_8);
                        default -> text(check).getBytes(StandardCharsets.UTF_8);
                    });
        }
        spec.commandLine().getOut().print(json ? check.json() : text(check));
        spec.commandLine().getOut().flush();
        if (check.holds()) {
            return Isohume.DONE;
        }
        spec.commandLine()
                .getErr()
                .println(check.failed() + " of " + check.lines().size() + " figures disagree; do not release results"
                        + " from this machine, and report the ones marked FAIL with the version of the JVM");
        return Isohume.FAILED;
    }

    private String ending(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        for (String known : List.of("pdf", "txt", "json")) {
            if (name.endsWith("." + known)) {
                return known;
            }
        }
        throw new ParameterException(
                spec.commandLine(), "the report's name " + file + " ends in none of .pdf, .txt and .json");
    }

    private static Map<String, String> machine() {
        Map<String, String> machine = new LinkedHashMap<>();
        machine.put("program", Program.title());
        machine.put("java", System.getProperty("java.vm.vendor") + " " + System.getProperty("java.vm.version"));
        machine.put("system", System.getProperty("os.name") + " " + System.getProperty("os.version"));
        machine.put("processor", System.getProperty("os.arch"));
        return machine;
    }

    private static String text(SelfCheck check) {
        StringWriter text = new StringWriter();
        PrintWriter to = new PrintWriter(text);
        to.println("Published figures, computed on this machine at " + check.at());
        check.machine().forEach((what, which) -> to.println(what + ": " + which));
        to.println();
        TextTable table =
                new TextTable(List.of("", ">expected", ">found", ">difference", ">limit", "unit", "figure", "source"));
        for (SelfCheck.Line line : check.lines()) {
            table.row(List.of(
                    line.holds() ? "pass" : "FAIL",
                    SelfCheck.figure(line.expected()),
                    SelfCheck.figure(line.found()),
                    SelfCheck.difference(line.difference()),
                    SelfCheck.difference(line.limit()),
                    line.unit(),
                    line.what(),
                    line.source()));
        }
        table.write(to);
        to.println();
        to.println(
                check.lines().size() - check.failed() + " of " + check.lines().size() + " figures agree");
        to.flush();
        return text.toString();
    }
}
