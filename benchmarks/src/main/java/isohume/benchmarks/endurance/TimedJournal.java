// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.endurance;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.journal.Entry;
import isohume.journal.Fact;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.function.Consumer;

/** A journal that knows how long its last append took, and lets somebody look after each. */
final class TimedJournal implements Journal {
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final Journal journal;
    private final Consumer<RunFact> listener;
    private long nanos;

    TimedJournal(Journal journal, Consumer<RunFact> listener) {
        this.journal = journal;
        this.listener = listener;
    }

    /** What appending took since it was last asked. */
    long spent() {
        long spent = nanos;
        nanos = 0;
        return spent;
    }

    @Override
    @CanIgnoreReturnValue
    public Entry append(StreamName stream, Fact fact) {
        long begun = threads.getCurrentThreadCpuTime();
        Entry entry = journal.append(stream, fact);
        listener.accept(RunNotation.decode(fact));
        nanos += threads.getCurrentThreadCpuTime() - begun;
        return entry;
    }

    @Override
    public List<Entry> read(StreamName stream, long after, int most) {
        return journal.read(stream, after, most);
    }

    @Override
    public long last(StreamName stream) {
        return journal.last(stream);
    }

    @Override
    public List<StreamName> streams(String kind) {
        return journal.streams(kind);
    }

    @Override
    public void close() {
        journal.close();
    }
}
