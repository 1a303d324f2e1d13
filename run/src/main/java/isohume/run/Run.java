// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.device.Answer;
import isohume.device.Setpoint;
import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.run.reach.WayPoint;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;

/**
 * Carries out a plan. One run, one thread; a person's orders are taken between two acts. Intention, act, outcome are
 * written in that order, and nothing is done that is not written first.
 */
public final class Run {
    private final Journal journal;
    private final StreamName stream;
    private final Bench bench;
    private final Timekeeper time;
    private final Course course = new Course();
    private final Journey journey;
    private final Queue<RunFact.Ordered> orders = new ConcurrentLinkedQueue<>();

    private Run(Journal journal, StreamName stream, Bench bench, Timekeeper time) {
        this.journal = journal;
        this.stream = stream;
        this.bench = bench;
        this.time = time;
        this.journey = new Journey(bench.way(), course);
    }

    /** A new run; its first fact is on disk when this returns. */
    public static Run begin(Journal journal, StreamName stream, RunFact.Started started, Bench bench, Timekeeper time) {
        Run run = new Run(journal, stream, bench, time);
        run.write(started);
        return run;
    }

    /** Takes up a run that ended as stopped or interrupted, at its first point that is not whole. */
    public static Run resume(Journal journal, StreamName stream, String operator, Bench bench, Timekeeper time) {
        Run run = new Run(journal, stream, bench, time);
        run.catchUp();
        Ending ending = run.course.ending().orElseThrow(() -> new IllegalStateException(stream + " has not ended"));
        switch (ending) {
            case STOPPED, INTERRUPTED -> run.write(new RunFact.Resumed(operator));
            case COMPLETED, ABANDONED ->
                throw new IllegalStateException(
                        stream + " is " + run.course.phase().word() + " and stays so");
        }
        return run;
    }

    /**
     * Closes a run that was cut off, if it was: the chamber is brought to rest and the run is marked as interrupted, so
     * that a person can take it up again. Says whether there was anything to close.
     */
    public static boolean closeIfCutOff(Journal journal, StreamName stream, Bench bench, Timekeeper time) {
        Run run = new Run(journal, stream, bench, time);
        run.catchUp();
        if (run.course.ending().isPresent()) {
            return false;
        }
        run.write(new RunFact.Rested(bench.chamber().rest()));
        run.write(new RunFact.Finished(Ending.INTERRUPTED, "the program ended in the middle of it"));
        return true;
    }

    private void catchUp() {
        for (Entry entry : journal.read(stream, 0, Integer.MAX_VALUE)) {
            course.take(entry);
        }
    }

    /** Says what a person wants; taken up between two acts of the run. From any thread. */
    public void order(Order order, String operator, String reason) {
        orders.add(new RunFact.Ordered(order, operator, reason));
    }

    /**
     * Works until the plan is done or somebody ends it. However it ends, the chamber is at rest.
     *
     * @throws isohume.journal.JournalLost when facts cannot be kept any more; the chamber was asked to rest
     */
    @CanIgnoreReturnValue
    public Ending carryOut() {
        try {
            RunFact.Finished finished = work();
            write(new RunFact.Rested(bench.chamber().rest()));
            write(finished);
            return finished.ending();
        } catch (RuntimeException | Error broken) { // the journal is lost, or there is a bug: no record, no run
            Answer ignored = bench.chamber().rest();
            throw broken;
        }
    }

    private RunFact.Finished work() {
        if (journey.needsLook()) {
            write(new RunFact.Observed(time.instant(), bench.read()));
        }
        Optional<RunFact.Finished> over = toNextPoint();
        Instant next = time.instant();
        while (over.isEmpty()) {
            RunFact.Ordered ordered = orders.poll();
            if (ordered != null) {
                over = obey(ordered);
            } else if (time.instant().isBefore(next)) {
                time.waitUntil(next, () -> !orders.isEmpty());
            } else {
                next = following(next);
                write(new RunFact.Observed(time.instant(), bench.read()));
                over = step();
            }
        }
        return over.get();
    }

    /** The next poll on the grid; polls that were missed are not made up for. */
    private Instant following(Instant poll) {
        Duration interval = course.plan().rules().interval();
        long missed = Duration.between(poll, time.instant()).dividedBy(interval);
        return poll.plus(interval.multipliedBy(Math.max(0, missed) + 1));
    }

    private Optional<RunFact.Finished> obey(RunFact.Ordered ordered) {
        write(ordered);
        return switch (ordered.order()) {
            case HOLD -> hold("held by " + ordered.operator() + because(ordered));
            case RESUME -> course.phase() == Phase.HELD ? to(course.point()) : Optional.empty();
            case SKIP -> toNextPoint();
            case STOP -> ended(Ending.STOPPED, "stopped by " + ordered.operator() + because(ordered));
            case ABANDON -> ended(Ending.ABANDONED, "given up by " + ordered.operator() + because(ordered));
        };
    }

    private static String because(RunFact.Ordered ordered) {
        return ordered.reason().isBlank() ? "" : ": " + ordered.reason();
    }

    private Optional<RunFact.Finished> step() {
        if (course.phase() == Phase.HELD) {
            return Optional.empty();
        }
        Optional<String> silent = course.silentChannel(time.instant());
        if (silent.isPresent()) {
            return hold(silent.get() + " has been silent for more than "
                    + course.plan().rules().patience().toSeconds() + " s"
                    + course.latest()
                            .map(m -> m.absent().get(silent.get()))
                            .map(detail -> ": " + detail)
                            .orElse(""));
        }
        return switch (course.phase()) {
            case APPROACH -> approach();
            case SOAK -> soak();
            case RECORD -> record();
            case HELD, SAFE_STOP, FINISHED, ABANDONED -> Optional.empty();
        };
    }

    private Optional<RunFact.Finished> approach() {
        if (course.onTheWay().isPresent()) {
            if (journey.passed()) {
                return ask(course.point(), journey.onward());
            }
        } else if (course.settled()) {
            return enter(Phase.SOAK, "settled");
        }
        if (inPhaseFor().compareTo(course.plan().rules().longest()) > 0) {
            return hold("not settled after " + inPhaseFor().toMinutes() + " min; " + hindrance());
        }
        return Optional.empty();
    }

    private Optional<RunFact.Finished> soak() {
        if (!course.kept()) {
            return enter(Phase.APPROACH, "settling lost: " + hindrance());
        }
        return inPhaseFor().compareTo(course.soak()) >= 0 ? enter(Phase.RECORD, "soaked") : Optional.empty();
    }

    private Optional<RunFact.Finished> record() {
        if (!course.kept()) {
            return enter(
                    Phase.APPROACH,
                    "settling lost after " + course.recordRows() + " readings, which are not used: " + hindrance());
        }
        if (course.recordRows() < course.plan().rules().readings()) {
            return Optional.empty();
        }
        write(course.record());
        return toNextPoint();
    }

    private Duration inPhaseFor() {
        return Duration.between(course.since(), time.instant());
    }

    private String hindrance() {
        return Settling.furthest(course.waiting()).map(Settling::inWords).orElse("");
    }

    private Optional<RunFact.Finished> toNextPoint() {
        Optional<Integer> next = course.nextPoint();
        return next.isPresent() ? to(next.get()) : ended(Ending.COMPLETED, "every point is done");
    }

    private Optional<RunFact.Finished> to(int number) {
        return ask(number, journey.first(number));
    }

    private Optional<RunFact.Finished> ask(int number, Optional<WayPoint> before) {
        Setpoint target = before.map(WayPoint::target).orElseGet(() -> journey.target(number));
        String purpose = before.map(
                        w -> "on the way to point " + number + ": " + w.aim().words() + "; ")
                .orElse("");
        write(
                before.isPresent()
                        ? new RunFact.Detoured(number, target, before.get().aim())
                        : new RunFact.Asked(number, target));
        Answer answer = bench.chamber().request(target);
        write(new RunFact.Answered(answer));
        return switch (answer) {
            case Answer.Taken taken ->
                enter(Phase.APPROACH, purpose + "the chamber is set to " + inWords(taken.target()));
            case Answer.AtRest atRest -> hold("the chamber is at rest and took no target");
            case Answer.Refused refused -> hold("the chamber refused " + inWords(target) + ": " + refused.why());
            case Answer.None none -> hold("the chamber did not answer: " + none.detail());
        };
    }

    private static String inWords(Setpoint target) {
        return String.format(
                Locale.ROOT,
                "%.2f °C, %.2f %% RH",
                target.temperature().celsius(),
                target.humidity().percent());
    }

    private Optional<RunFact.Finished> enter(Phase phase, String why) {
        write(new RunFact.Entered(phase, Math.max(1, course.point()), why));
        return Optional.empty();
    }

    private Optional<RunFact.Finished> hold(String why) {
        return enter(Phase.HELD, why);
    }

    private static Optional<RunFact.Finished> ended(Ending ending, String why) {
        return Optional.of(new RunFact.Finished(ending, why));
    }

    private void write(RunFact fact) {
        course.take(journal.append(stream, RunNotation.encode(fact)), fact);
    }
}
