// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.endurance;

import isohume.benchmarks.Figure;
import isohume.benchmarks.Machine;
import isohume.benchmarks.Options;
import isohume.benchmarks.Program;
import isohume.benchmarks.Report;
import isohume.device.sheet.Sheet;
import isohume.journal.Journal;
import isohume.journal.SqliteJournal;
import isohume.journal.StreamName;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.Order;
import isohume.run.Plan;
import isohume.run.PlanSheet;
import isohume.run.Reach;
import isohume.run.Roles;
import isohume.run.Run;
import isohume.run.RunFact;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Simulated days at a poll of 24 channels each second, with the engine and its watch as they are; only the bench is simple
 * and has no line, and facts are encoded and then forgotten unless a journal on disk is asked for. A tick is all that the program does between two polls but reading the bench and
 * waiting for the disk. Points settle and are recorded first; then one never does.
 */
public final class Endurance {
    private static final long HOURS = 72;
    private static final double MEGABYTE = 1024 * 1024;
    private static final StreamName STREAM = new StreamName("run", "endurance");
    private static final String PLAN = """
            plan: Days
            points:
              - {temperature: 23, humidity: [50, 60, 70, 60, 50]}
              - {temperature: 25, humidity: [50, 60, 70, 60, 50]}
            rules: {interval-seconds: 1, readings: 300, longest-minutes: 100000}
            """;

    private Endurance() {}

    public static void main(String[] arguments) {
        Program program = Endurance::measure;
        System.exit(program.run(arguments, "--hours N", "--journal disk"));
    }

    static Report measure(Options options) throws IOException {
        Machine machine = Machine.here();
        long hours = options.quick() ? 1 : options.whole("--hours", 1, HOURS);
        Path folder = Files.createTempDirectory("endurance");
        try {
            boolean disk = options.own().getOrDefault("--journal", "none").equals("disk");
            Ticks ticks = run(folder.resolve("journal.db"), Duration.ofHours(hours), disk);
            return new Report(
                    machine,
                    Map.of(),
                    List.of(
                            Figure.of("simulated time", (double) hours, "h"),
                            Figure.of("polls of 24 channels", ticks.count(), ""),
                            Figure.of("points recorded", ticks.recorded(), ""),
                            Figure.atMost(300, "most heap after a collection", ticks.mostHeap() / MEGABYTE, "MB"),
                            Figure.of("journal on disk", size(folder) / MEGABYTE, "MB"),
                            Figure.atMost(1, "judging a tick, median", ticks.millis(0.5), "ms"),
                            Figure.atMost(5, "judging a tick, 99 of 100", ticks.millis(0.99), "ms"),
                            Figure.of("judging a tick, longest", ticks.millis(1), "ms")));
        } finally {
            try (Stream<Path> left = Files.walk(folder)) {
                for (Path path : left.sorted(Comparator.reverseOrder()).toList()) {
                    Files.deleteIfExists(path);
                }
            }
        }
    }

    private static double size(Path folder) throws IOException {
        Path file = folder.resolve("journal.db");
        return Files.exists(file) ? (double) Files.size(file) : 0;
    }

    private static Ticks run(Path file, Duration length, boolean disk) {
        ManyChannels channels = new ManyChannels();
        Ticks ticks = new Ticks(channels, length);
        Journal kept = disk ? SqliteJournal.open(file, channels) : new Forgetting(channels);
        try (TimedJournal journal = new TimedJournal(kept, ticks::hear)) {
            Run run = Run.begin(journal, STREAM, started(), ticks.around(channels.bench()), channels);
            ticks.follow(journal, () -> run.order(Order.STOP, "endurance", "long enough"));
            var unused = run.carryOut();
        }
        return ticks;
    }

    private static RunFact.Started started() {
        Reach reach = new Reach(
                Temperature.ofCelsius(5),
                Temperature.ofCelsius(50),
                RelativeHumidity.ofPercent(5),
                RelativeHumidity.ofPercent(95),
                DewPoint.overIce(Temperature.ofCelsius(-28)),
                DewPoint.overWater(Temperature.ofCelsius(38)));
        MoistAir air = MoistAir.by(Formulation.SONNTAG_1990);
        Plan plan = new PlanSheet(reach, air).read(Sheet.parse(PLAN, "days.yaml"));
        Roles roles = new Roles(
                "mirror/dew_point",
                "mirror/deposit",
                "thermometer/temperature",
                "thermometer/pressure",
                "thermometer/mirror_pressure",
                ManyChannels.judged());
        return new RunFact.Started(plan, "many channels", roles, Formulation.SONNTAG_1990, "Nobody", "endurance", "{}");
    }
}
