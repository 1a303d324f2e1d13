// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.quantity.Quantity;
import isohume.run.Waiting.Criterion;
import isohume.run.settling.Closing;
import isohume.run.settling.Display;
import isohume.run.settling.Lagged;
import isohume.run.settling.Lateness;
import isohume.run.settling.Outlook;
import isohume.run.settling.Owed;
import isohume.run.settling.Tail;
import isohume.run.watch.Bounds;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One signal judged by what is still to come of it. */
final class Tailed {
    private static final Duration LONGEST_GAP = Duration.ofMinutes(2);
    private static final int TURNS = 5; // every so many seconds a signal is judged anew, one after the other

    private final Watched watched;
    private final Owed owed;
    private final Lateness lateness;
    private final Tail tail;
    private final int turn;
    private final Closing closing = new Closing();
    private final Display display;
    private OptionalDouble latest = OptionalDouble.empty();
    private Optional<Outlook> outlook = Optional.empty();
    private Optional<Duration> left = Optional.empty();
    private double step;
    private Instant lastAt = Instant.EPOCH;
    private Instant due = Instant.EPOCH;

    /** @param turn its place among the signals */
    Tailed(Watched watched, Owed owed, Lateness lateness, Duration interval, int turn) {
        this.watched = watched;
        this.owed = owed;
        this.lateness = lateness;
        this.tail = new Tail(interval.toMillis() / 1000.0);
        this.turn = turn % TURNS;
        this.display = new Display(watched.quantity(), Bounds.usual().still());
    }

    Watched watched() {
        return watched;
    }

    void take(Moment moment, Lagged reference) {
        latest = watched.source().in(moment);
        OptionalDouble shown = moment.value(watched.display());
        if (watched.difference() && shown.isPresent()) {
            boolean known = latest.isPresent(); // the reference too
            display.take(
                    seconds(moment.at()),
                    shown.getAsDouble(),
                    moment.step(watched.display()),
                    known ? List.of(new Display.Witness(reference, 0)) : List.of());
        }
        if (latest.isEmpty()) {
            return;
        }
        if (Duration.between(lastAt, moment.at()).compareTo(LONGEST_GAP) > 0) {
            restart(); // what was before a long silence says nothing about what comes after it
        }
        step = Math.max(step, moment.step(watched.display()));
        lastAt = moment.at();
        tail.take(seconds(lastAt), latest.getAsDouble(), shown.orElse(latest.getAsDouble()));
    }

    private static double seconds(Instant at) {
        return at.toEpochMilli() / 1000.0;
    }

    /**
     * Begins anew, and keeps what has been shown of how late it is.
     *
     * @param settled the most that may be to come if what is to come is late and nothing else
     */
    void begin(double settled) {
        judge(Duration.ZERO)
                .map(Outlook::toCome)
                .filter(toCome -> Outlook.size(toCome) <= settled)
                .ifPresent(toCome -> lateness.learn(toCome, owed.late()));
        restart();
    }

    void restart() {
        tail.clear();
        closing.clear();
        outlook = Optional.empty();
        left = Optional.empty();
        step = 0;
    }

    /** Mean of the last two minutes or so; empty while there is none. */
    OptionalDouble recentMean() {
        return tail.recentMean();
    }

    /** What is known now, not older than a few seconds. */
    Optional<Outlook> outlook() {
        return outlook.isEmpty() || !lastAt.isBefore(due) ? judge(Duration.ZERO) : outlook;
    }

    /** What is known with every value that was taken, of a mean over the last stretch of time. */
    Optional<Outlook> judge(Duration mean) {
        outlook = tail.outlook(owed, step, mean.toMillis() / 1000.0);
        outlook.ifPresent(now -> closing.take(seconds(lastAt), Outlook.size(now.toCome())));
        left = Optional.empty();
        due = Instant.ofEpochSecond(lastAt.getEpochSecond() / TURNS * TURNS + TURNS + turn);
        return outlook;
    }

    /** An instrument's difference: all that is still to come. */
    Waiting difference(double limit) {
        Optional<Outlook> now = outlook();
        if (now.isEmpty()) {
            return waiting(List.of(), Optional.of(unfilled()));
        }
        List<Criterion> criteria = new ArrayList<>();
        if (display.frozen().isPresent()) {
            criteria.add(new Criterion(Waiting.Kind.FROZEN, 1, 0));
        }
        double size = Outlook.size(now.get().toCome());
        criteria.add(new Criterion(Waiting.Kind.TO_COME, size, limit));
        if (left.isEmpty()) {
            left = between(now.get().within(limit), closing.within(seconds(lastAt), size, limit));
        }
        return waiting(criteria, left);
    }

    /** A reference: where it is, and half of what it changes while a record is taken. */
    Waiting reference(OptionalDouble wanted, double band, double limit, Duration record) {
        Optional<Outlook> now = outlook();
        OptionalDouble mean = recentMean();
        if (now.isEmpty() || mean.isEmpty()) {
            return waiting(List.of(), Optional.of(unfilled()));
        }
        List<Criterion> criteria = new ArrayList<>();
        if (wanted.isPresent()) {
            criteria.add(new Criterion(Waiting.Kind.BAND, Math.abs(mean.getAsDouble() - wanted.getAsDouble()), band));
        }
        double half = Outlook.size(now.get().during(record)) / 2;
        criteria.add(new Criterion(Waiting.Kind.TO_COME, half, limit));
        boolean met = criteria.stream().allMatch(c -> c.ratio() <= 1);
        return waiting(criteria, met ? Optional.of(Duration.ZERO) : now.get().within(2 * limit));
    }

    /**
     * The model knows what may be slow, and is late; how fast the size has closed of late knows nothing of that, and is
     * early. Between the two, in the logarithm.
     */
    private static Optional<Duration> between(Optional<Duration> late, Optional<Duration> early) {
        if (late.isEmpty() || early.isEmpty() || early.get().compareTo(late.get()) > 0) {
            return late.isEmpty() ? early : late;
        }
        double product = (double) late.get().toSeconds() * early.get().toSeconds();
        return Optional.of(Duration.ofSeconds(Math.round(Math.sqrt(product))));
    }

    private Duration unfilled() {
        return Duration.ofSeconds(Math.round(Math.ceil(tail.unfilled())));
    }

    private Waiting waiting(List<Criterion> criteria, Optional<Duration> expected) {
        return new Waiting(
                watched.name(),
                watched.quantity(),
                watched.difference(),
                latest,
                criteria,
                expected,
                outlook,
                display.frozen()
                        .map(why -> why.words(watched.quantity().differenceUnit()))
                        .orElse(""));
    }

    /** Whether it is a channel of relative humidity, or the reference's. */
    boolean humid() {
        return watched.quantity() == Quantity.RELATIVE_HUMIDITY;
    }
}
