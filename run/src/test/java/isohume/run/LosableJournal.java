// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.journal.Entry;
import isohume.journal.Fact;
import isohume.journal.JournalLost;
import isohume.journal.MemoryJournal;
import isohume.journal.Relay;
import isohume.journal.StreamName;
import java.time.InstantSource;
import java.util.List;
import java.util.function.Consumer;

/** A journal in memory, which is lost at a chosen append. */
final class LosableJournal extends Relay {
    private final int lostAt;
    Consumer<RunFact> onAppend = fact -> {};

    LosableJournal(InstantSource clock, int lostAt) {
        super(new MemoryJournal(clock));
        this.lostAt = lostAt;
    }

    @Override
    @CanIgnoreReturnValue
    public Entry append(StreamName stream, Fact fact) {
        if (last(stream) >= lostAt) {
            throw new JournalLost("the disk is full");
        }
        Entry entry = super.append(stream, fact);
        onAppend.accept(RunNotation.decode(fact));
        return entry;
    }

    List<Fact> facts() {
        return read(Rig.STREAM, 0, Integer.MAX_VALUE).stream().map(Entry::fact).toList();
    }

    List<RunFact> runFacts() {
        return facts().stream().map(RunNotation::decode).toList();
    }
}
