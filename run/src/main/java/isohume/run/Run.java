// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.device.Answer;
import isohume.device.Setpoint;
import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.run.entry.DisplayedChannel;
import isohume.run.entry.Word;
import isohume.run.reach.WayPoint;
import isohume.run.watch.Fault;
import isohume.run.watch.Measure;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.jspecify.annotations.Nullable;

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
    private final Queue<Word> words = new ConcurrentLinkedQueue<>();
    private final Queue<Warning> warnings = new ConcurrentLinkedQueue<>();
    private @Nullable Guard guard;
    private long observed; // number of the last observation

    private record Warning(Fault fault, String channel, String evidence) {}

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
        RunFact.Finished finished = new RunFact.Finished(Ending.INTERRUPTED, "the program ended in the middle of it");
        run.write(new Resting(bench.chamber(), time, Resting.ONCE).after(finished, run::write));
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

    /** Says what a person read on a display, or did about it; taken up between two acts of the run. From any thread. */
    public void say(Word word) {
        words.add(word);
    }

    /** Tells the run of a fault that shows outside of its bench; it is there for good. From any thread. */
    public void warn(Fault fault, String channel, String evidence) {
        warnings.add(new Warning(fault, channel, evidence));
    }

    /**
     * Works until the plan is done or somebody ends it. However it ends, the chamber was asked to rest, again and again
     * if it did not answer; the last fact says so if it never did.
     *
     * @throws isohume.journal.JournalLost when facts cannot be kept any more; the chamber was asked to rest
     */
    @CanIgnoreReturnValue
    public Ending carryOut() {
        try {
            RunFact.Finished finished = work();
            finished = new Resting(bench.chamber(), time, Resting.PERSISTENT).after(finished, this::write);
            write(finished);
            return finished.ending();
        } catch (RuntimeException | Error broken) { // the journal is lost, or there is a bug: no record, no run
            new Resting(bench.chamber(), time, Resting.SHORT).withoutRecord();
            throw broken;
        }
    }

    private RunFact.Finished work() {
        write(new RunFact.Guarded(bench.bounds(), bench.policies()));
        guard = new Guard(bench, course, time);
        if (journey.needsLook()) {
            write(new RunFact.Observed(time.instant(), bench.read()));
        }
        Optional<RunFact.Finished> over = toNextPoint();
        Duration next = time.elapsed(); // a clock that is set must not stop the polls
        while (over.isEmpty()) {
            RunFact.Ordered ordered = orders.poll();
            if (ordered != null) {
                over = obey(ordered);
            } else if (!words.isEmpty()) {
                hear(words.remove());
            } else if (time.elapsed().compareTo(next) < 0) {
                time.waitUntil(
                        time.instant().plus(next.minus(time.elapsed())), () -> !orders.isEmpty() || !words.isEmpty());
            } else {
                next = following(next);
                RunFact.Observed observed = new RunFact.Observed(time.instant(), bench.read());
                write(observed);
                over = guarded(observed);
                over = over.isPresent() ? over : step();
            }
        }
        return over.get();
    }

    /** The next poll on the grid; polls that were missed are not made up for. */
    private Duration following(Duration poll) {
        Duration interval = course.plan().rules().interval();
        long missed = time.elapsed().minus(poll).dividedBy(interval);
        return poll.plus(interval.multipliedBy(Math.max(0, missed) + 1));
    }

    private Guard guard() {
        return Objects.requireNonNull(guard, "a run at work has its guard");
    }

    /** Writes down what went wrong or came right in this poll, and does what the policies say. */
    private Optional<RunFact.Finished> guarded(RunFact.Observed observed) {
        for (Warning warning = warnings.poll(); warning != null; warning = warnings.poll()) {
            guard().tell(warning.fault(), warning.channel(), warning.evidence());
        }
        boolean touched = course.touched();
        int rows = course.recordRows();
        guard().look(observed).forEach(this::write);
        Optional<RunFact.Finished> over = act(rows);
        if (over.isEmpty() && touched && !course.touched() && course.phase() == Phase.APPROACH) {
            return enter(Phase.APPROACH, "the trouble is over; settling anew");
        }
        return over;
    }

    private Optional<RunFact.Finished> act(int rows) {
        Optional<RunFact.Acted> due = guard().due(course.phase() == Phase.HELD ? Measure.STOP : Measure.GO_ON);
        if (due.isPresent()) {
            RunFact.Acted acted = due.get();
            write(acted);
            switch (acted.measure()) {
                case STOP -> {
                    return ended(Ending.STOPPED, acted.why());
                }
                case HOLD -> {
                    return hold(acted.why());
                }
                case SKIP -> {
                    return toNextPoint();
                }
                case GO_ON, STOP_AFTER_POINT -> {}
            }
        }
        boolean still = course.phase() == Phase.SOAK || course.phase() == Phase.RECORD;
        if (still && course.touched()) {
            String unused = course.phase() == Phase.RECORD ? "; " + rows + " readings are not used" : "";
            return enter(Phase.APPROACH, course.trouble() + unused);
        }
        return Optional.empty();
    }

    private Optional<RunFact.Finished> obey(RunFact.Ordered ordered) {
        write(ordered);
        return switch (ordered.order()) {
            case HOLD -> hold("held by " + ordered.operator() + because(ordered));
            case RESUME -> course.phase() == Phase.HELD ? again() : Optional.empty();
            case SKIP -> toNextPoint();
            case STOP -> ended(Ending.STOPPED, "stopped by " + ordered.operator() + because(ordered));
            case ABANDON -> ended(Ending.ABANDONED, "given up by " + ordered.operator() + because(ordered));
        };
    }

    /**
     * Reads the references at once for a display that was read, where they have not been since. That poll is beside the
     * grid, and the watch, which counts polls, does not see it.
     */
    private void hear(Word word) {
        boolean recording = course.phase() == Phase.RECORD;
        if (recording && word instanceof Word.Shown shown && lastRead().isBefore(shown.at())) {
            write(new RunFact.Observed(time.instant(), bench.read()));
        }
        new Entering(course).answer(word, observed).ifPresent(this::write);
    }

    private Instant lastRead() {
        return course.latest().map(Moment::at).orElse(Instant.MIN);
    }

    private static String because(RunFact.Ordered ordered) {
        return ordered.reason().isBlank() ? "" : ": " + ordered.reason();
    }

    private Optional<RunFact.Finished> step() {
        if (course.phase() == Phase.HELD) {
            boolean tooLong = inPhaseFor().compareTo(bench.bounds().held()) > 0;
            return tooLong
                    ? ended(Ending.STOPPED, "held for " + inPhaseFor().toHours() + " h, and nobody came")
                    : Optional.empty();
        }
        if (course.phase() == Phase.APPROACH && course.touched()) {
            return guard().askAgain() ? to(course.point()) : Optional.empty();
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
            return journey.passed() ? ask(course.point(), journey.onward()) : unlessTooLong();
        }
        return course.arrived() ? enter(Phase.SOAK, course.arrival()) : unlessTooLong();
    }

    private Optional<RunFact.Finished> unlessTooLong() {
        Duration taken = guard().sinceAsked();
        if (taken.compareTo(course.plan().rules().longest()) > 0) {
            String evidence = "not settled after " + taken.toMinutes() + " min; " + hindrance();
            guard().tell(Fault.NOT_SETTLED, "point " + course.point(), evidence);
        }
        return Optional.empty();
    }

    private Optional<RunFact.Finished> soak() {
        if (!course.kept()) {
            return enter(Phase.APPROACH, "settling lost: " + hindrance());
        }
        return course.soaked(time.instant()) ? beginRecord() : unlessTooLong();
    }

    private Optional<RunFact.Finished> beginRecord() {
        Optional<RunFact.Finished> over = enter(Phase.RECORD, "soaked");
        List<DisplayedChannel> wanted = course.entries().wanted(course.point());
        if (!wanted.isEmpty()) {
            List<String> channels = wanted.stream().map(DisplayedChannel::id).toList();
            write(new RunFact.Wanted(course.point(), channels));
        }
        return over;
    }

    private Optional<RunFact.Finished> record() {
        if (!course.kept()) {
            return enter(
                    Phase.APPROACH,
                    "settling lost after " + course.recordRows() + " readings, which are not used: " + hindrance());
        }
        if (!course.readEnough()) {
            return Optional.empty();
        }
        if (!course.entries().complete(course.point(), time.instant())) {
            return unlessUnreadTooLong();
        }
        write(course.record());
        return toNextPoint();
    }

    private Optional<RunFact.Finished> unlessUnreadTooLong() {
        if (inPhaseFor().compareTo(course.plan().rules().longest()) > 0) {
            for (DisplayedChannel channel : course.entries().wanted(course.point())) {
                String evidence =
                        "nobody typed what it shows for " + inPhaseFor().toMinutes() + " min";
                guard().tell(Fault.UNREAD, channel.id(), evidence);
            }
        }
        return Optional.empty();
    }

    private Duration inPhaseFor() {
        return Duration.between(course.since(), time.instant());
    }

    private String hindrance() {
        return Settling.furthest(course.waiting()).map(Settling::inWords).orElse("");
    }

    private Optional<RunFact.Finished> toNextPoint() {
        guard().waitAnew();
        if (course.lastPoint().isPresent()) {
            return ended(Ending.STOPPED, course.lastPoint().get());
        }
        Optional<Integer> next = course.nextPoint();
        return next.isPresent() ? to(next.get()) : ended(Ending.COMPLETED, "every point is done");
    }

    private Optional<RunFact.Finished> again() {
        guard().waitAnew();
        return to(course.point());
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
        guard().asked(answer);
        return switch (answer) {
            case Answer.Taken taken ->
                enter(Phase.APPROACH, purpose + "the chamber is set to " + inWords(taken.target()));
            case Answer.AtRest atRest -> hold("the chamber is at rest and took no target");
            case Answer.Refused refused -> hold("the chamber refused " + inWords(target) + ": " + refused.why());
            case Answer.None none -> enter(Phase.APPROACH, "the chamber did not answer: " + none.detail());
        };
    }

    static String inWords(Setpoint target) {
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
        observed = fact instanceof RunFact.Observed ? course.taken() : observed;
    }
}
