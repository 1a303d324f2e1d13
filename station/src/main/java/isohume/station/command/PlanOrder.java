// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.device.sheet.Sheet;
import isohume.quantity.Point;
import isohume.run.order.Lesson;
import isohume.run.order.Sequence;
import isohume.station.job.Texts;
import isohume.station.job.Worksheet;
import isohume.station.plan.PlanJson;
import isohume.station.plan.PlanText;
import isohume.station.plan.Rearranged;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A plan in the order that takes least time. */
@Command(
        name = "order",
        description = "Finds the order of a plan's points that takes least time and keeps to the rules: up before down"
                + " where hysteresis is asked for, no wet point before a dry one, no condensation on the way.",
        footer = {
            "",
            "The plan itself is never changed. With --out, the reordered plan is written to a new file.",
            "Example: isohume plan order plan.yaml --out plan-2.yaml"
        },
        mixinStandardHelpOptions = true)
final class PlanOrder implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private PlanCommand.Given given;

    @Option(names = "--out", paramLabel = "FILE.yaml", description = "a new file for the reordered plan")
    private @Nullable Path out;

    @Option(names = "--json", description = "print the answer as JSON")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        refuseToOverwrite();
        Worksheet worksheet = Worksheet.draft(given.plan);
        List<Lesson> lessons = given.lessons(worksheet.job().benchTitle());
        long begun = System.nanoTime();
        Rearranged rearranged = Rearranged.of(worksheet, lessons);
        spec.commandLine()
                .getErr()
                .printf(
                        Locale.ROOT,
                        "%d points put in order in %.2f s%n",
                        worksheet.plan().points().size(),
                        (System.nanoTime() - begun) / 1e9);
        PrintWriter answer = spec.commandLine().getOut();
        if (json) {
            answer.println(PlanJson.rearranged(rearranged).toPrettyString());
        } else {
            print(rearranged, answer);
        }
        if (out != null) {
            write(worksheet, rearranged.shortest(), out);
        }
        if (!rearranged.before().reachable()) {
            spec.commandLine().getErr().println("some points cannot be reached; \"isohume plan check\" says which");
        }
        return Isohume.DONE;
    }

    private void refuseToOverwrite() throws IOException {
        if (out != null && Files.exists(out)) {
            throw new IOException(out + " is there already; nothing was changed; choose a new name");
        }
    }

    private void write(Worksheet worksheet, Sequence sequence, Path file) throws IOException {
        Set<Integer> stated = IntStream.range(0, sequence.points().size())
                .filter(i ->
                        worksheet.ordering().stated().contains(sequence.were().get(i)))
                .mapToObj(i -> i + 1)
                .collect(Collectors.toSet());
        String before = Sheet.document(given.plan);
        String after = PlanText.with(before, sequence.points(), stated);
        check(after, sequence.points());
        Files.write(file, after.getBytes(StandardCharsets.UTF_8), java.nio.file.StandardOpenOption.CREATE_NEW);
        PrintWriter messages = spec.commandLine().getErr();
        messages.println("the reordered plan is in " + file + "; " + given.plan + " is as it was");
        Path from = given.plan.toAbsolutePath().getParent();
        Path to = file.toAbsolutePath().getParent();
        if (from != null && !from.equals(to)) {
            messages.println("it stands in another folder: the files that it names must be there too");
        }
    }

    /** What is written is read again before anybody relies on it. */
    private void check(String document, List<Point> points) {
        Path folder = given.plan.toAbsolutePath().getParent();
        String name = String.valueOf(given.plan.getFileName());
        if (folder == null) {
            return;
        }
        Texts there = Texts.in(folder);
        List<Point> read = Worksheet.draft(n -> n.equals(name) ? document : there.text(n), name)
                .plan()
                .points();
        boolean same = read.size() == points.size()
                && IntStream.range(0, read.size()).allMatch(i -> same(read.get(i), points.get(i)));
        if (!same) {
            throw new IllegalArgumentException("the plan is written in a way that cannot be kept while its points are"
                    + " reordered; write \"points:\" as a list with one line for each temperature");
        }
    }

    private static boolean same(Point a, Point b) {
        return PlanText.plain(a.temperature().celsius())
                        .equals(PlanText.plain(b.temperature().celsius()))
                && PlanText.plain(a.humidity().percent())
                        .equals(PlanText.plain(b.humidity().percent()))
                && a.direction() == b.direction();
    }

    private static void print(Rearranged rearranged, PrintWriter answer) {
        TextTable table = new TextTable(List.of(">point", ">was", ">°C", ">% RH", "direction"));
        Sequence shortest = rearranged.shortest();
        for (int i = 0; i < shortest.points().size(); i++) {
            Point point = shortest.points().get(i);
            table.row(List.of(
                    String.valueOf(point.number()),
                    String.valueOf(shortest.were().get(i)),
                    String.format(Locale.ROOT, "%.1f", point.temperature().celsius()),
                    String.format(Locale.ROOT, "%.1f", point.humidity().percent()),
                    point.direction().key()));
        }
        table.write(answer);
        answer.println();
        answer.println("before: " + hours(rearranged.given()));
        rearranged
                .given()
                .broken()
                .ifPresent(broken -> answer.println("        the plan as it is breaks a rule: " + broken));
        answer.println("after:  " + hours(shortest));
        answer.println("        " + bound(shortest));
        rearranged
                .relaxed()
                .ifPresent(relaxed -> answer.println("        wet points last at each temperature only would take "
                        + hours(relaxed) + "; for that write \"order: {wet: last_at_temperature}\" into the plan"));
        answer.println("times " + PlanCheck.learned(rearranged.before().lessons()));
    }

    private static String bound(Sequence sequence) {
        return sequence.exact()
                ? "no order that keeps to the rules takes less"
                : String.format(
                        Locale.ROOT,
                        "no order that keeps to the rules takes less than %.1f h; this one is at most %.1f %% from it",
                        sequence.bound() / 60,
                        100 * sequence.gap());
    }

    private static String hours(Sequence sequence) {
        return String.format(
                Locale.ROOT,
                "about %.1f h, nine times in ten between %.1f and %.1f h",
                sequence.expected().minutes() / 60,
                sequence.expected().low() / 60,
                sequence.expected().high() / 60);
    }
}
