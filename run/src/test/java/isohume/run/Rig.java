// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.journal.Entry;
import isohume.journal.StreamName;
import isohume.moistair.Formulation;
import isohume.quantity.Direction;
import isohume.quantity.Point;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.watch.Bounds;
import isohume.run.watch.Policies;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/** A bench, a clock and a journal, all of them fakes that keep their contracts. */
final class Rig {
    static final StreamName STREAM = new StreamName("run", "R-1");
    static final Plan PLAN = new Plan("Two points", List.of(point(1, 23, 50), point(2, 25, 30)), quick());

    final FakeTime time = new FakeTime();
    final FakeBench bench = new FakeBench(time);
    final LosableJournal journal;

    private Rig(int lostAt) {
        journal = new LosableJournal(time, lostAt);
    }

    static Rig thatWorks() {
        return new Rig(Integer.MAX_VALUE);
    }

    static Rig losingTheJournalAt(int k) {
        return new Rig(k);
    }

    static Point point(int number, double celsius, double percent) {
        return new Point(
                number, Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent), Direction.ASCENDING);
    }

    private static Rules quick() {
        Rules usual = Rules.fixed();
        SettlingRule.Fixed settling = SettlingRule.Fixed.usual();
        return new Rules(
                usual.interval(),
                new SettlingRule.Fixed(
                        Duration.ofMinutes(2),
                        settling.temperature(),
                        settling.dewPoint(),
                        settling.humidity(),
                        settling.humidityDifference(),
                        settling.temperatureDifference(),
                        Duration.ofMinutes(2),
                        Duration.ofMinutes(3)),
                5,
                5,
                usual.noiseShare(),
                Duration.ofHours(1),
                Duration.ofMinutes(1));
    }

    Run begin() {
        return begin(started());
    }

    Run begin(RunFact.Started started) {
        return Run.begin(journal, STREAM, started, bench.bench(), time);
    }

    Run begin(Policies policies) {
        return Run.begin(journal, STREAM, started(), bench.bench(Bounds.usual(), policies), time);
    }

    static RunFact.Started started() {
        return new RunFact.Started(
                PLAN, "a fake bench", FakeBench.ROLES, Formulation.SONNTAG_1990, "Ada", "test", "no job");
    }

    /** With a plan that waits for what is still to come. */
    static RunFact.Started startedByTheTail() {
        Plan plan = new Plan(PLAN.title(), PLAN.points(), Rules.usual());
        Targets targets = new Targets(Map.of("P-1/relative_humidity", List.of(0.6, 0.4)));
        return new RunFact.Started(
                plan, "a fake bench", FakeBench.ROLES, Formulation.SONNTAG_1990, "Ada", "test", "no job", targets);
    }

    Ending run() {
        return begin().carryOut();
    }

    Course course() {
        Course course = new Course();
        for (Entry entry : journal.read(STREAM, 0, Integer.MAX_VALUE)) {
            course.take(entry);
        }
        return course;
    }

    /** Every phase entered, in order, with its point: {@code "soak 1"}. */
    List<String> phases() {
        return journal.runFacts().stream()
                .filter(RunFact.Entered.class::isInstance)
                .map(RunFact.Entered.class::cast)
                .map(e -> e.phase().word() + " " + e.point())
                .toList();
    }
}
