// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.endurance;

import isohume.benchmarks.Figure;
import isohume.benchmarks.Machine;
import isohume.benchmarks.Options;
import isohume.benchmarks.Program;
import isohume.benchmarks.Report;
import isohume.journal.Journal;
import isohume.journal.SqliteJournal;
import isohume.journal.StreamName;
import isohume.run.Order;
import isohume.run.Run;
import isohume.run.RunFact;
import isohume.station.job.Texts;
import isohume.station.job.Worksheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Simulated days at a poll of 24 channels each second, with the engine and its watch as they are; only the bench is simple
 * and has no line, and facts are encoded and then forgotten unless a journal on disk is asked for. A tick is all that the
 * program does between two polls but reading the bench and waiting for the disk.
 */
public final class Endurance {
    private static final long HOURS = 72;
    private static final double MEGABYTE = 1024 * 1024;
    private static final StreamName STREAM = new StreamName("run", "endurance");
    private static final String PLAN = """
            points:
            LEGS
            rules: {interval-seconds: 1, readings: 300, longest-minutes: 100000}
            """;
    private static final String LEG = """
              - {temperature: CELSIUS, humidity: [PERCENT]}
            """;
    private static final String INSTRUMENT = """
              - id: NAME
                kind: transmitter
                maker: Somebody (invented)
                model: One
                serial: "1"
                position: centre
                received: 2026-02-27
                condition: clean
                channels:
                  relative_humidity: {resolution: 0.01, tolerance: 2.0, tolerance-from: maker}
                  temperature: {resolution: 0.01, tolerance: 0.5, tolerance-from: maker}
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

    /** The demonstration's job on its bench, with as many instruments as there are here. */
    private static RunFact.Started started() {
        Texts demonstration = name -> text("/isohume/station/demo/" + name);
        Worksheet worksheet = Worksheet.read(
                name -> {
                    String text = demonstration.text(name);
                    return name.equals("plan.yaml")
                            ? text.substring(0, text.indexOf("\ninstruments:")) + "\ninstruments:\n" + instruments()
                                    + PLAN.replace("LEGS", legs())
                            : text;
                },
                "plan.yaml");
        return worksheet.started("Nobody", "endurance");
    }

    /** More points than any of these days can take. */
    private static String legs() {
        String upAndDown = String.join(", ", Collections.nCopies(25, "50, 60, 70, 60"));
        return IntStream.range(0, 12)
                .mapToObj(i ->
                        LEG.replace("CELSIUS", String.valueOf(23 + 2 * (i % 2))).replace("PERCENT", upAndDown))
                .collect(Collectors.joining());
    }

    private static String instruments() {
        return IntStream.range(0, ManyChannels.INSTRUMENTS)
                .mapToObj(i -> INSTRUMENT.replace("NAME", ManyChannels.probe(i)))
                .collect(Collectors.joining());
    }

    private static String text(String name) {
        try (InputStream in = Objects.requireNonNull(Worksheet.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
