// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import isohume.journal.Entry;
import isohume.run.Course;
import isohume.run.Moment;
import isohume.run.Phase;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.run.Waiting;
import isohume.station.web.Desk;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;

/** One run as its facts show it so far, for the page. Reads on from where it was. Safe for any thread. */
final class Followed {
    private static final int AT_ONCE = 500;
    private static final int CLOSING_ROWS = 300;
    private static final Duration CLOSING_EVERY = Duration.ofSeconds(20);
    private static final int WHOLE_RUN_ROWS = 1500;

    private final String run;
    private final Course course = new Course();
    private final Trace whole = new Trace(WHOLE_RUN_ROWS);
    private final Trace closing = new Trace(CLOSING_ROWS);
    private Instant nextClosing = Instant.EPOCH;
    private final Recent recent = new Recent();
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
            case RunFact.Observed observed -> {
                draw(observed);
                close(observed.at());
            }
            case RunFact.Entered e -> {}
            case RunFact.Started s -> {}
            case RunFact.Resumed r -> {}
            case RunFact.Detoured d -> closing.clear();
            case RunFact.Asked a -> closing.clear();
            case RunFact.Answered a -> {}
            case RunFact.Ordered o -> {}
            case RunFact.Recorded r -> {}
            case RunFact.Rested r -> {}
            case RunFact.Finished f -> {}
            case RunFact.Guarded g -> {}
            case RunFact.Noticed n -> {}
            case RunFact.Over o -> {}
            case RunFact.Acted a -> {}
            case RunFact.Withdrawn w -> {}
            case RunFact.OfDisplay d -> {}
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

    /** How far from settled every signal is, now and then. */
    private void close(Instant at) {
        if (at.isBefore(nextClosing)) {
            return;
        }
        nextClosing = at.plus(CLOSING_EVERY);
        List<Waiting> waiting = course.waiting();
        if (!waiting.isEmpty()) {
            closing.add(new Trace.Row(
                    at.toEpochMilli() / 1000.0,
                    waiting.stream()
                            .map(w -> w.worst().map(Waiting.Criterion::ratio).orElse(Double.NaN))
                            .toList()));
        }
    }

    /** The ratios of all signals to their limits since the set point was asked, in the order of the course's. */
    List<Trace.Row> closing() {
        return closing.after(0);
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

    /** Share of the soak kept, or of the readings taken. */
    double share(Instant now) {
        if (course.phase() == Phase.SOAK) {
            double passed = Duration.between(course.since(), now).toMillis();
            return course.soak()
                    .map(soak -> passed / Math.max(1, soak.toMillis()))
                    .orElseGet(() -> closing(course.waiting()));
        }
        return (double) course.recordRows() / course.plan().rules().mostReadings();
    }

    /** How far the signal that is furthest from settled has come: 1 when it has. */
    private static double closing(List<Waiting> waiting) {
        return waiting.stream().flatMap(w -> w.worst().stream()).mapToDouble(Waiting.Criterion::ratio).max().stream()
                .map(ratio -> Math.min(1, 1 / ratio))
                .findFirst()
                .orElse(0);
    }
}
