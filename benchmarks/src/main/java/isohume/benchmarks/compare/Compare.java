// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.compare;

import isohume.benchmarks.Conditions;
import isohume.benchmarks.Figure;
import isohume.benchmarks.Machine;
import isohume.benchmarks.Options;
import isohume.benchmarks.Program;
import isohume.benchmarks.Report;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Isohume against PsychroLib (moist air), numpy (Monte Carlo) and uncertainties (budgets).
 *
 * <p>The tasks take turns, so that whatever else the machine does falls on all of them. One value at a time and batches
 * run on one thread and are compared by processor time, which is what the clock shows on an idle machine; Monte Carlo uses
 * all cores and is compared by the clock.
 */
public final class Compare {
    private static final int ROUNDS = 9;
    private static final int SHORT = 100; // ms; Monte Carlo takes longer by itself
    private static final double SAME_HUMIDITY = 2e-3; // PsychroLib has no enhancement factors and other equations
    private static final double SAME_DEW_POINT = 0.05; // K, for the same reason
    private static final double SAME_INTERVAL = 0.01; // of the ends, from a million trials each
    private static final double SAME_BUDGET = 1e-4;

    private final Contestant isohume;
    private final Contestant psychrolib;
    private final Contestant python;
    private final List<Task> tasks = new ArrayList<>();
    private final List<Figure> figures = new ArrayList<>();

    Compare(Contestant isohume, Contestant psychrolib, Contestant python) {
        this.isohume = isohume;
        this.psychrolib = psychrolib;
        this.python = python;
    }

    /** The peers' commands come in the properties {@code peer.psychrolib} and {@code peer.python}. */
    public static void main(String[] arguments) {
        Program program = Compare::measure;
        System.exit(program.run(arguments));
    }

    private static Report measure(Options options) throws IOException {
        try (Contestant isohume = Contestant.start("Isohume", Isohume.command());
                Contestant psychrolib = Contestant.start("PsychroLib", command("peer.psychrolib"));
                Contestant python = Contestant.start("numpy", command("peer.python"))) {
            return new Compare(isohume, psychrolib, python).report(options);
        }
    }

    private static List<String> command(String property) {
        return List.of(System.getProperty(property, "").split(File.pathSeparator));
    }

    Report report(Options options) throws IOException {
        Machine machine = Machine.here(); // its load before we add our own
        Map<String, String> versions = new LinkedHashMap<>();
        Path conditions = Files.createTempFile("conditions", ".csv");
        try {
            Conditions.drawn().write(conditions);
            for (Contestant each : List.of(isohume, psychrolib, python)) {
                each.load(conditions);
                versions.put(each.name(), each.version());
            }
        } finally {
            Files.delete(conditions);
        }
        race(options.quick() ? 1 : ROUNDS, options.quick() ? 1 : SHORT);
        return new Report(machine, versions, figures);
    }

    private void race(int rounds, int milliseconds) throws IOException {
        Task humidity = task(isohume, "humidity");
        Task batch = task(isohume, "humidity-batch");
        Task preview = task(isohume, "humidity-preview");
        Task peerHumidity = task(psychrolib, "humidity");
        Task dewPoint = task(isohume, "dewpoint");
        Task dewPointBatch = task(isohume, "dewpoint-batch");
        Task peerDewPoint = task(psychrolib, "dewpoint");
        Task monteCarlo = task(isohume, "montecarlo");
        Task peerMonteCarlo = task(python, "montecarlo");
        Task budget = task(isohume, "budget");
        Task peerBudget = task(python, "budget");

        for (Task task : List.of(humidity, batch, preview)) {
            task.mustAgreeWith(peerHumidity, SAME_HUMIDITY, 0);
        }
        dewPoint.mustAgreeWith(peerDewPoint, 0, SAME_DEW_POINT);
        dewPointBatch.mustAgreeWith(peerDewPoint, 0, SAME_DEW_POINT);
        monteCarlo.mustAgreeWith(peerMonteCarlo, SAME_INTERVAL, 0);
        budget.mustAgreeWith(peerBudget, SAME_BUDGET, 1e-9);

        takeTurns(rounds, milliseconds);

        byProcessor("RH, one value a call", 1, humidity, peerHumidity);
        byProcessor("RH, batch", 0.25, batch, peerHumidity);
        byProcessor("RH, preview batch", 0.25, preview, peerHumidity);
        byProcessor("dew point, one value a call", 0.3, dewPoint, peerDewPoint);
        byProcessor("dew point, batch", 0.3, dewPointBatch, peerDewPoint);
        monteCarlo(monteCarlo, peerMonteCarlo);
        budget(budget, peerBudget);
    }

    private Task task(Contestant contestant, String work) {
        Task task = new Task(contestant, work);
        tasks.add(task);
        return task;
    }

    private void takeTurns(int rounds, int milliseconds) throws IOException {
        for (int i = 0; i < 2; i++) {
            for (Task task : tasks) {
                task.warmUp(6 * milliseconds);
            }
        }
        for (int round = 0; round < rounds; round++) {
            for (Task task : tasks) {
                task.run(milliseconds);
            }
        }
    }

    private void byProcessor(String name, double bar, Task ours, Task theirs) {
        double mine = ours.median().processor();
        double other = theirs.median().processor();
        figures.add(Figure.of(name + ": Isohume", mine, "ns"));
        figures.add(Figure.of(name + ": PsychroLib", other, "ns"));
        figures.add(Figure.atMost(bar, name + ": ratio", mine / other, ""));
    }

    private void monteCarlo(Task ours, Task theirs) throws IOException {
        String name = "Monte Carlo, 14 inputs, 10^6 trials";
        double mine = ours.median().clock();
        double other = theirs.median().clock();
        figures.add(Figure.of(name + ": Isohume", mine, "ms")); // ns for each of 10^6 trials are ms for all
        figures.add(Figure.of(name + ": numpy", other, "ms"));
        figures.add(Figure.atMost(0.2, name + ": ratio", mine / other, ""));
        figures.add(Figure.of(
                name + ": ratio of processor time",
                ours.median().processor() / theirs.median().processor(),
                ""));
        figures.add(Figure.atMost(64, name + ": Java heap", isohume.give("heap")[0], "MB"));
    }

    private void budget(Task ours, Task theirs) {
        double mine = ours.median().processor() / 1e3;
        double other = theirs.median().processor() / 1e3;
        figures.add(Figure.of("budget of 14 inputs: Isohume", mine, "µs"));
        figures.add(Figure.of("budget of 14 inputs: uncertainties", other, "µs"));
        figures.add(Figure.of("budget of 14 inputs: ratio", mine / other, ""));
    }
}
