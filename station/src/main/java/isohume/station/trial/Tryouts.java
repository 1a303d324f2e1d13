// SPDX-License-Identifier: Apache-2.0
package isohume.station.trial;

import isohume.device.driver.DeviceDescription;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.run.lease.LeaseRefused;
import isohume.station.bench.Leases;
import isohume.station.bench.OpenBench;
import isohume.station.bench.Workplace;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The trials of devices at this station. A device of the bench is read as the bench has it connected; while a run is at
 * work there, only what the run reads is shown, and a run that begins ends every trial on a line of its own. Safe for any
 * thread.
 */
public final class Tryouts {
    public static final Duration LONGEST = Duration.ofMinutes(10);
    private static final int MOST_AT_WORK = 4;
    private static final int MOST_KEPT = 12;
    private static final Duration MOST_WAIT = Duration.ofSeconds(5); // for a read that is under way when a run begins

    private final Journal journal;
    private final Optional<Workplace> workplace;
    private final InstantSource clock;
    private final List<Tryout> tryouts = new ArrayList<>();
    private int last;

    /** What became of the wish for a trial. */
    public sealed interface Begun {
        /** It is at work. */
        record Yes(Tryout tryout) implements Begun {}

        /** It was not begun; {@code why} says what to do instead. */
        record Refused(String why) implements Begun {}
    }

    /** None yet. */
    public Tryouts(Journal journal, Optional<Workplace> workplace, InstantSource clock) {
        this.journal = journal;
        this.workplace = workplace;
        this.clock = clock;
        workplace.ifPresent(place -> place.beforeWork(this::giveWay));
    }

    /** The devices of the bench; none where no bench is connected. */
    public List<DeviceDescription> ofBench() {
        return connected().stream().map(OpenBench.Connected::description).toList();
    }

    /** The run at work on the bench. */
    public Optional<String> run() {
        return workplace.flatMap(Workplace::atWorkOn).map(StreamName::id);
    }

    /** Trials, newest first. */
    public synchronized List<Tryout> all() {
        return List.copyOf(tryouts.reversed());
    }

    public Optional<Tryout> find(int number) {
        return all().stream().filter(one -> one.number() == number).findFirst();
    }

    /** Ends a trial because a person wants so. */
    public void stop(Tryout tryout) {
        tryout.end(Tryout.State.STOPPED);
    }

    /**
     * Begins a trial.
     *
     * @param howLong at most {@link #LONGEST}
     */
    public Begun begin(DeviceDescription description, Duration howLong) {
        Optional<OpenBench.Connected> own = connected().stream()
                .filter(one -> one.description().equals(description))
                .findFirst();
        Optional<StreamName> run = busy(description);
        if (run.isPresent()) {
            return besides(run.get(), description, own.isPresent(), howLong);
        }
        Tryout tryout = make(description, howLong, own);
        Optional<String> objection = admit(tryout);
        if (objection.isPresent()) {
            return new Begun.Refused(objection.get());
        }
        Optional<StreamName> meanwhile = busy(description); // a run that begins from here on ends the trial
        if (meanwhile.isPresent()) {
            withdraw(tryout);
            return besides(meanwhile.get(), description, own.isPresent(), howLong);
        }
        Optional<String> taken = own.isEmpty() && description.isChamber() ? takenBy(description) : Optional.empty();
        if (taken.isPresent()) {
            withdraw(tryout);
            return new Begun.Refused(taken.get());
        }
        start(tryout, own.isPresent());
        return new Begun.Yes(tryout);
    }

    private Tryout make(DeviceDescription description, Duration howLong, Optional<OpenBench.Connected> own) {
        return new Tryout(
                number(),
                description,
                Optional.empty(),
                clock.instant(),
                howLong,
                listener -> own.map(connected -> Attempt.through(connected, listener))
                        .orElseGet(() -> Attempt.of(description, clock, listener)));
    }

    /** The run at work on the line that a device is on. */
    private Optional<StreamName> busy(DeviceDescription description) {
        return isOnBench(description) ? workplace.flatMap(Workplace::atWorkOn) : Optional.empty();
    }

    /** While a run has the line. */
    private Begun besides(StreamName run, DeviceDescription description, boolean own, Duration howLong) {
        return own
                ? along(description, run, howLong)
                : new Begun.Refused("The run " + run.id() + " is at work on the line to " + description.place()
                        + ", and a second connection could disturb it. Choose the bench's own device to see what the"
                        + " run reads, or wait until the run is over.");
    }

    private Begun along(DeviceDescription description, StreamName run, Duration howLong) {
        Tryout tryout = new Tryout(
                number(),
                description,
                Optional.of(run.id()),
                clock.instant(),
                howLong,
                listener -> new ReadAlong(journal, run, description, listener));
        Optional<String> objection = admit(tryout);
        if (objection.isPresent()) {
            return new Begun.Refused(objection.get());
        }
        start(tryout, true);
        return new Begun.Yes(tryout);
    }

    private void start(Tryout tryout, boolean overhears) {
        Runnable after = () -> {};
        if (overhears) {
            String place = tryout.description().place();
            after = workplace
                    .map(there -> there.bench().ears().lend((at, sent, bytes) -> {
                        if (at.startsWith(place)) {
                            tryout.moved(Attempt.line(sent, bytes));
                        }
                    }))
                    .orElse(after);
        }
        tryout.start(after);
    }

    private synchronized int number() {
        return ++last;
    }

    /** Takes a trial in; what stands against it otherwise. */
    private synchronized Optional<String> admit(Tryout tryout) {
        for (Tryout other : tryouts) {
            if (other.atWork() && other.where().equals(tryout.where())) {
                return Optional.of("Trial " + other.number() + " is reading at "
                        + other.description().place() + " already; look at that one, or stop it first.");
            }
        }
        if (tryouts.stream().filter(Tryout::atWork).count() >= MOST_AT_WORK) {
            return Optional.of(MOST_AT_WORK + " trials are at work already; stop one of them first.");
        }
        tryouts.add(tryout);
        while (tryouts.size() > MOST_KEPT) {
            Tryout oldest =
                    tryouts.stream().filter(one -> !one.atWork()).findFirst().orElseThrow();
            boolean unused = tryouts.remove(oldest);
        }
        return Optional.empty();
    }

    private synchronized void withdraw(Tryout tryout) {
        tryout.end(Tryout.State.STOPPED);
        boolean unused = tryouts.remove(tryout);
    }

    /** Who has the right to a chamber that is not this bench's; it is taken and given back. */
    private Optional<String> takenBy(DeviceDescription chamber) {
        if (isOnBench(chamber)) {
            return Optional.empty();
        }
        try {
            Leases.of(chamber, journal, clock).close();
            return Optional.empty();
        } catch (LeaseRefused refused) {
            return Optional.of(String.valueOf(refused.getMessage()));
        }
    }

    private void giveWay() {
        List<Tryout> inTheWay = all().stream()
                .filter(one -> one.atWork() && isOnBench(one.description()))
                .toList();
        inTheWay.forEach(one -> one.end(Tryout.State.GAVE_WAY));
        inTheWay.forEach(one -> one.join(MOST_WAIT));
    }

    private boolean isOnBench(DeviceDescription description) {
        String place = Leases.numeric(description.place());
        return ofBench().stream().anyMatch(own -> Leases.numeric(own.place()).equals(place));
    }

    private List<OpenBench.Connected> connected() {
        return workplace.map(place -> place.bench().connected()).orElse(List.of());
    }
}
