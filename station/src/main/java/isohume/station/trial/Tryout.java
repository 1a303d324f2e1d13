// SPDX-License-Identifier: Apache-2.0
package isohume.station.trial;

import isohume.device.Reading;
import isohume.device.driver.DeviceDescription;
import isohume.device.trial.Trial;
import isohume.station.bench.Leases;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** One trial of a device, on a thread of its own. Safe for any thread. */
public final class Tryout {
    private final int number;
    private final DeviceDescription description;
    private final String where;
    private final Optional<String> run;
    private final Instant begun;
    private final Duration howLong;
    private final Tape tape = new Tape();
    private final Source source;
    private volatile Report report;
    private volatile State state = State.AT_WORK;
    private @Nullable Thread thread;

    /** How a trial stands. */
    public enum State {
        AT_WORK,
        /** Its time is over. */
        OVER,
        /** A person stopped it. */
        STOPPED,
        /** A run began that needs the line. */
        GAVE_WAY
    }

    /**
     * Does not begin yet.
     *
     * @param run the run whose readings it shows; empty if it reads by itself
     * @param source what reads for a listener
     */
    Tryout(
            int number,
            DeviceDescription description,
            Optional<String> run,
            Instant begun,
            Duration howLong,
            Function<Attempt.Listener, Source> source) {
        this.number = number;
        this.description = description;
        this.where = Leases.numeric(description.place());
        this.run = run;
        this.begun = begun;
        this.howLong = howLong;
        this.report = Report.of(new Trial(description));
        this.source = source.apply(new Attempt.Listener() {
            @Override
            public void moved(String line) {
                tape.add(line);
            }

            @Override
            public void read(List<Reading> readings, Trial soFar) {
                report = Report.of(soFar);
            }
        });
    }

    /** Begins, unless it was ended before; {@code after} is run when nothing is read any more. */
    synchronized void start(Runnable after) {
        if (state != State.AT_WORK) {
            after.run();
            return;
        }
        thread = Thread.ofPlatform().daemon().name("trial " + number).start(() -> {
            try {
                Trial unused = source.carryOut(howLong);
            } finally {
                end(State.OVER);
                after.run();
            }
        });
    }

    /** A line of the transcript that came by another way than the source. */
    void moved(String line) {
        tape.add(line);
    }

    /** Ends it; the first word counts. */
    synchronized void end(State how) {
        if (state == State.AT_WORK) {
            state = how;
            source.stop();
        }
    }

    /** Waits until nothing is read any more, for so long at most. */
    void join(Duration patience) {
        Thread working;
        synchronized (this) {
            working = thread;
        }
        try {
            boolean unused = working == null || working.join(patience);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    public int number() {
        return number;
    }

    public DeviceDescription description() {
        return description;
    }

    /** The place of the device, the same however it was written. */
    String where() {
        return where;
    }

    /** The run whose readings it shows; empty if it reads by itself. */
    public Optional<String> run() {
        return run;
    }

    public Instant begun() {
        return begun;
    }

    /** When it is over at the latest. */
    public Instant until() {
        return begun.plus(howLong);
    }

    public State state() {
        return state;
    }

    public boolean atWork() {
        return state == State.AT_WORK;
    }

    public Report report() {
        return report;
    }

    /** The last of what went over the line, as lines of a transcript. */
    public List<String> lines() {
        return tape.lines();
    }

    /** How many lines went before those. */
    public long linesLeftOut() {
        return tape.leftOut();
    }
}
