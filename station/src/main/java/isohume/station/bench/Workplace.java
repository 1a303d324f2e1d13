// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.journal.Journal;
import isohume.journal.JournalLost;
import isohume.journal.StreamName;
import isohume.run.Order;
import isohume.run.Run;
import isohume.run.RunFact;
import isohume.run.Timekeeper;
import isohume.station.Program;
import isohume.station.job.Worksheet;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One bench and its runs, one at a time, each on a thread of its own. Safe for any thread. What becomes of a run is read
 * from the journal, not from here.
 */
public final class Workplace implements AutoCloseable {
    private static final Logger LOG = System.getLogger(Workplace.class.getName());
    private static final Duration TIME_TO_REST = Duration.ofSeconds(10);

    private final Journal journal;
    private final Worksheet worksheet;
    private final OpenBench bench;
    private final Timekeeper time;
    private @Nullable StreamName current;
    private @Nullable Run run;
    private @Nullable Thread thread;

    public Workplace(Journal journal, Worksheet worksheet, OpenBench bench, Timekeeper time) {
        this.journal = journal;
        this.worksheet = worksheet;
        this.bench = bench;
        this.time = time;
    }

    public Worksheet worksheet() {
        return worksheet;
    }

    /** Closes runs that an earlier end of the program cut off, with the chamber asked to rest; says how many. */
    public int closeCutOff() {
        int closed = 0;
        for (StreamName stream : journal.streams("run")) {
            if (Run.closeIfCutOff(journal, stream, bench.bench(), time)) {
                closed++;
            }
        }
        return closed;
    }

    /** Begins the worksheet's plan, unless a run is at work. Its first fact is on disk when this returns. */
    public synchronized Optional<StreamName> begin(String operator) {
        if (atWork()) {
            return Optional.empty();
        }
        String day = time.instant().atZone(ZoneOffset.UTC).toLocalDate().toString();
        StreamName stream =
                new StreamName("run", day + "-" + (journal.streams("run").size() + 1));
        RunFact.Started started = worksheet.started(operator, Program.title());
        work(stream, Run.begin(journal, stream, started, bench.bench(), time));
        return Optional.of(stream);
    }

    /** Takes up a run that was stopped or cut off, unless another is at work. */
    public synchronized boolean resume(StreamName stream, String operator) {
        if (atWork()) {
            return false;
        }
        work(stream, Run.resume(journal, stream, operator, bench.bench(), time));
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

    private boolean atWork() {
        return thread != null && thread.isAlive();
    }

    private void work(StreamName stream, Run taken) {
        current = stream;
        run = taken;
        thread = Thread.ofPlatform().name("run " + stream.id()).start(() -> carryOut(stream, taken));
    }

    private static void carryOut(StreamName stream, Run run) {
        try {
            run.carryOut();
        } catch (JournalLost lost) {
            LOG.log(Level.ERROR, stream + " ended, and the chamber was asked to rest: " + lost.getMessage());
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
    }

    private synchronized @Nullable Thread stop() {
        if (run == null || !atWork()) {
            return null;
        }
        run.order(Order.STOP, "the program", "it was told to end");
        return thread;
    }
}
