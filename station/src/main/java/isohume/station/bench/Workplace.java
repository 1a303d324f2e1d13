// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.JournalLost;
import isohume.journal.StreamName;
import isohume.run.Order;
import isohume.run.Run;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.run.Timekeeper;
import isohume.run.entry.Word;
import isohume.run.lease.Lease;
import isohume.run.watch.Fault;
import isohume.station.Program;
import isohume.station.job.Worksheet;
import isohume.station.notice.Notifier;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * One bench and its runs, one at a time, each on a thread of its own. Safe for any thread. What becomes of a run is read
 * from the journal, not from here.
 */
public final class Workplace implements AutoCloseable {
    private static final Logger LOG = System.getLogger(Workplace.class.getName());
    private static final int BETWEEN_LOOKS = 60; // facts
    private static final long MEGABYTE = 1_000_000;
    private static final long LEAST_ROOM = 200 * MEGABYTE;
    private static final Duration TIME_TO_REST = Duration.ofSeconds(10);

    private final Journal journal;
    private final Worksheet worksheet;
    private final OpenBench bench;
    private final Timekeeper time;
    private final Optional<Lease> lease;
    private final Notifier notifier;
    private final Journal heard;
    private LongSupplier room = () -> Long.MAX_VALUE;
    private Runnable makingWay = () -> {};
    private @Nullable StreamName current;
    private @Nullable Run run;
    private @Nullable Thread thread;
    private volatile Optional<String> trouble = Optional.empty();

    /** A workplace whose chamber nobody else can reach. */
    public Workplace(Journal journal, Worksheet worksheet, OpenBench bench, Timekeeper time) {
        this(journal, worksheet, bench, time, Optional.empty());
    }

    /**
     * A workplace; nobody else may command its chamber until it is closed.
     *
     * @param lease the right to the chamber; closed with the workplace
     */
    public Workplace(Journal journal, Worksheet worksheet, OpenBench bench, Timekeeper time, Optional<Lease> lease) {
        this.journal = journal;
        this.worksheet = worksheet;
        this.bench = bench;
        this.time = time;
        this.lease = lease;
        this.notifier = new Notifier(worksheet.hooks(), journal);
        this.heard = new Overheard(journal, this::hear);
    }

    /** After each fact of a run: who has to know is told, and the right to the chamber does not run out. */
    private void hear(Entry entry) {
        notifier.hear(entry);
        if (entry.number() % BETWEEN_LOOKS == 0) {
            lookAtDisk();
        }
        lease.ifPresent(Lease::renew);
    }

    /** Lets runs end in order while there is still room for their last facts; bytes that are left on the journal's disk. */
    public synchronized void watchRoom(LongSupplier left) {
        room = left;
    }

    private synchronized void lookAtDisk() {
        long left = room.getAsLong();
        if (left < LEAST_ROOM && run != null) {
            run.warn(
                    Fault.DISK_LOW,
                    "the journal's disk",
                    left / MEGABYTE + " MB, at least " + LEAST_ROOM / MEGABYTE + " MB");
        }
    }

    public Worksheet worksheet() {
        return worksheet;
    }

    /** The bench itself; only to be read, and only while no run is at work. */
    public OpenBench bench() {
        return bench;
    }

    /** The run at work. */
    public synchronized Optional<StreamName> atWorkOn() {
        return atWork() ? Optional.ofNullable(current) : Optional.empty();
    }

    /** Sets what is done before a run takes hold of the bench: whoever else reads there has let go when it returns. */
    public synchronized void beforeWork(Runnable makeWay) {
        makingWay = makeWay;
    }

    /**
     * Closes runs of this bench that an earlier end of the program cut off, or a full disk, with the chamber asked to
     * rest; says how many. A run of another bench is left to that one.
     */
    public synchronized int closeCutOff() {
        int closed = 0;
        for (StreamName stream : journal.streams("run")) {
            if (!atWork() && isOfThisBench(stream) && Run.closeIfCutOff(heard, stream, bench.bench(), time)) {
                closed++;
            }
        }
        return closed;
    }

    private boolean isOfThisBench(StreamName stream) {
        return RunNotation.decode(journal.read(stream, 0, 1).getFirst().fact()) instanceof RunFact.Started started
                && started.bench().equals(worksheet.job().benchTitle());
    }

    /** Begins the worksheet's plan, unless a run is at work. Its first fact is on disk when this returns. */
    public synchronized Optional<StreamName> begin(String operator) {
        if (atWork()) {
            return Optional.empty();
        }
        makingWay.run();
        int ignored = closeCutOff();
        String day = time.instant().atZone(ZoneOffset.UTC).toLocalDate().toString();
        StreamName stream =
                new StreamName("run", day + "-" + (journal.streams("run").size() + 1));
        RunFact.Started started = worksheet.started(operator, Program.title());
        work(stream, Run.begin(heard, stream, started, bench.bench(), time));
        return Optional.of(stream);
    }

    /** Takes up a run that was stopped or cut off, unless another is at work. */
    public synchronized boolean resume(StreamName stream, String operator) {
        if (atWork()) {
            return false;
        }
        makingWay.run();
        int ignored = closeCutOff();
        work(stream, Run.resume(heard, stream, operator, bench.bench(), time));
        return true;
    }

    /** Passes an order to the run at work, if it is that one. */
    public synchronized boolean order(StreamName stream, Order order, String operator, String reason) {
        if (run == null || !atWork() || !stream.equals(current)) {
            return false;
        }
        run.order(order, operator, reason);
        return true;
    }

    /** Passes a person's word about a display to the run at work, if it is that one. */
    public synchronized boolean say(StreamName stream, Word word) {
        if (run == null || !atWork() || !stream.equals(current)) {
            return false;
        }
        run.say(word);
        return true;
    }

    /** Why the last run ended without a last fact of its own; empty when it did not, or another has begun since. */
    public Optional<String> trouble() {
        return trouble;
    }

    private boolean atWork() {
        return thread != null && thread.isAlive();
    }

    private void work(StreamName stream, Run taken) {
        trouble = Optional.empty();
        current = stream;
        run = taken;
        thread = Thread.ofPlatform().name("run " + stream.id()).start(() -> carryOut(stream, taken));
    }

    private void carryOut(StreamName stream, Run run) {
        try {
            run.carryOut();
        } catch (JournalLost lost) {
            String what = "the run ended, and the chamber was asked to rest: " + lost.getMessage();
            LOG.log(Level.ERROR, stream + ": " + what);
            trouble = Optional.of(what);
            notifier.lost(stream, time.instant(), what);
        }
    }

    /** Brings a run at work to a safe stop, waits a little for it, and lets go of the bench. */
    @Override
    public void close() {
        Thread working = stop();
        if (working != null) {
            try {
                boolean ignored = working.join(TIME_TO_REST);
            } catch (InterruptedException hurried) {
                Thread.currentThread().interrupt();
            }
        }
        bench.close();
        notifier.close();
        lease.ifPresent(Lease::close);
    }

    private synchronized @Nullable Thread stop() {
        if (run == null || !atWork()) {
            return null;
        }
        run.order(Order.STOP, "the program", "it was told to end");
        return thread;
    }
}
