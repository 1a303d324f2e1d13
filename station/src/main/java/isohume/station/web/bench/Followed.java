// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import isohume.journal.Entry;
import isohume.run.Course;
import isohume.run.Moment;
import isohume.run.Phase;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.station.web.Desk;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;

/** One run as its facts show it so far, for the page. Reads on from where it was. Safe for any thread. */
final class Followed {
    private static final int AT_ONCE = 500;
    private static final int WHOLE_RUN_ROWS = 1500;

    private final String run;
    private final Course course = new Course();
    private final Trace whole = new Trace(WHOLE_RUN_ROWS);
    private final Recent recent = new Recent();
    private final Approaches approaches = new Approaches();
    private List<Line> lines = List.of();

    Followed(String run) {
        this.run = run;
    }

    String run() {
        return run;
    }

    /** Reads what is new and then looks; nothing changes while it looks. */
    synchronized <T> T look(Desk desk, Function<Followed, T> at) {
        List<Entry> facts = desk.facts(run, course.taken(), AT_ONCE);
        while (!facts.isEmpty()) {
            facts.forEach(this::take);
            facts = desk.facts(run, course.taken(), AT_ONCE);
        }
        return at.apply(this);
    }

    private void take(Entry entry) {
        RunFact fact = RunNotation.decode(entry.fact());
        course.take(entry, fact);
        switch (fact) {
            case RunFact.Observed observed -> draw(observed);
            case RunFact.Entered entered -> approaches.entered(entered.phase(), entered.point(), entry.at());
            case RunFact.Started s -> {}
            case RunFact.Resumed r -> {}
            case RunFact.Asked a -> {}
            case RunFact.Detoured d -> {}
            case RunFact.Answered a -> {}
            case RunFact.Ordered o -> {}
            case RunFact.Recorded r -> {}
            case RunFact.Rested r -> {}
            case RunFact.Finished f -> {}
        }
    }

    private void draw(RunFact.Observed observed) {
        if (lines.isEmpty()) {
            lines = Line.of(course.roles(), observed);
        }
        Moment moment = course.latest().orElseThrow(); // the course has just taken it
        Trace.Row row = new Trace.Row(
                observed.at().toEpochMilli() / 1000.0,
                lines.stream().map(line -> line.at(moment)).toList());
        whole.add(row);
        recent.add(row);
    }

    Course course() {
        return course;
    }

    List<Line> lines() {
        return lines;
    }

    List<Trace.Row> rows(boolean wholeRun, double after) {
        return wholeRun ? whole.after(after) : recent.after(after);
    }

    Approaches approaches() {
        return approaches;
    }

    /** Share of the soak kept, or of the readings taken. */
    double share(Instant now) {
        Duration inPhase = Duration.between(course.since(), now);
        if (course.phase() == Phase.SOAK) {
            return (double) inPhase.toMillis() / Math.max(1, course.soak().toMillis());
        }
        return (double) course.recordRows() / course.plan().rules().readings();
    }
}
