// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import isohume.journal.Entry;
import isohume.journal.Fact;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.moistair.Formulation;
import isohume.quantity.Direction;
import isohume.quantity.Point;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.result.Results;
import isohume.run.Course;
import isohume.run.Order;
import isohume.run.Plan;
import isohume.run.Rules;
import isohume.run.Run;
import isohume.run.RunFact;
import isohume.run.Timekeeper;
import isohume.station.plan.Shelf;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A house with one run in it, made by the engine itself on an invented bench. */
public final class InventedDesk implements Desk {
    public static final String RUN = "2026-03-02-1";
    static final StreamName STREAM = new StreamName("run", RUN);

    private final Timekeeper time;
    private final Kept journal = new Kept();
    final InventedBench bench;
    private final Run run;

    public InventedDesk(Timekeeper time) {
        this.time = time;
        this.bench = new InventedBench(time);
        this.run = Run.begin(
                journal,
                STREAM,
                new RunFact.Started(
                        plan(),
                        "Bench 2",
                        InventedBench.ROLES,
                        Formulation.SONNTAG_1990,
                        "M. Invented",
                        program(),
                        "{}"),
                bench.bench(),
                time);
    }

    private static Plan plan() {
        List<Point> points = new ArrayList<>();
        int[] percents = {35, 55, 75, 55, 35};
        for (int i = 0; i < percents.length; i++) {
            points.add(new Point(
                    i + 1,
                    Temperature.ofCelsius(i < 4 ? 23 : 30),
                    RelativeHumidity.ofPercent(percents[i]),
                    i < 3 ? Direction.ASCENDING : Direction.DESCENDING));
        }
        return new Plan("Two probes, as found", points, Rules.usual());
    }

    /** Carries the run out on this thread until it ends. */
    public void carryOut() {
        run.carryOut();
    }

    @Override
    public String program() {
        return "Isohume, invented";
    }

    @Override
    public InstantSource clock() {
        return time;
    }

    @Override
    public ZoneId zone() {
        return ZoneOffset.UTC;
    }

    @Override
    public String remark() {
        return "An invented bench; a minute of the run passes in a second.";
    }

    @Override
    public Optional<String> current() {
        return Optional.of(RUN);
    }

    @Override
    public List<Summary> runs() {
        Course course = new Course();
        facts(RUN, 0, Integer.MAX_VALUE).forEach(course::take);
        return List.of(new Summary(
                RUN,
                course.plan().title(),
                course.started().bench(),
                course.started().operator(),
                course.began(),
                course.phase(),
                course.recorded().size() + course.skipped().size(),
                course.plan().points().size()));
    }

    @Override
    public List<Entry> facts(String name, long after, int most) {
        return name.equals(RUN) ? journal.read(STREAM, after, most) : List.of();
    }

    @Override
    public Optional<Results> results(String name) {
        return Optional.empty();
    }

    @Override
    public List<Document> documents(String name) {
        return List.of();
    }

    @Override
    public Optional<byte[]> document(String name, String document) {
        return Optional.empty();
    }

    @Override
    public Shelf plans() {
        return new Shelf(Path.of("no plans"), Optional.empty(), bench -> List.of());
    }

    @Override
    public Optional<String> ready() {
        return Optional.empty();
    }

    @Override
    public Told begin(String operator) {
        return new Told.Refused("No bench is connected.");
    }

    @Override
    public Told order(String name, Order order, String operator, String reason) {
        run.order(order, operator, reason);
        return new Told.PassedOn();
    }

    /** One stream in memory. */
    private final class Kept implements Journal {
        private final List<Entry> entries = new ArrayList<>();

        @Override
        public synchronized Entry append(StreamName stream, Fact fact) {
            Entry entry = new Entry(stream, entries.size() + 1, time.instant(), fact, "0".repeat(64));
            entries.add(entry);
            return entry;
        }

        @Override
        public synchronized List<Entry> read(StreamName stream, long after, int most) {
            int from = (int) Math.min(after, entries.size());
            return List.copyOf(entries.subList(from, (int) Math.min(entries.size(), from + (long) most)));
        }

        @Override
        public synchronized long last(StreamName stream) {
            return entries.size();
        }

        @Override
        public List<StreamName> streams(String kind) {
            return List.of(STREAM);
        }

        @Override
        public void close() {}
    }

    /** A clock that jumps to whatever is waited for, up to an instant at which the run is told to stop there. */
    public static final class Jumping implements Timekeeper {
        private Instant now = Instant.parse("2026-03-02T08:00:00Z");

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public void waitUntil(Instant when, java.util.function.BooleanSupplier unless) {
            if (!unless.getAsBoolean() && when.isAfter(now)) {
                now = when;
            }
        }
    }
}
