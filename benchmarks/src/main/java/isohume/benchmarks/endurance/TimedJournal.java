// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.endurance;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.journal.Entry;
import isohume.journal.Fact;
import isohume.journal.Journal;
import isohume.journal.Relay;
import isohume.journal.StreamName;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.function.Consumer;

/** A journal that knows how long its last append took, and lets somebody look after each. */
final class TimedJournal extends Relay {
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final Consumer<RunFact> listener;
    private long nanos;

    TimedJournal(Journal journal, Consumer<RunFact> listener) {
        super(journal);
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
        Entry entry = super.append(stream, fact);
        listener.accept(RunNotation.decode(fact));
        nanos += threads.getCurrentThreadCpuTime() - begun;
        return entry;
    }
}
