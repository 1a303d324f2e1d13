// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.journal.Entry;
import isohume.journal.Fact;
import isohume.journal.Journal;
import isohume.journal.JournalLost;
import isohume.journal.MemoryJournal;
import isohume.journal.StreamName;
import java.time.InstantSource;
import java.util.List;
import java.util.function.Consumer;

/** A journal in memory, which is lost at a chosen append. */
final class LosableJournal implements Journal {
    private final MemoryJournal kept;
    private final int lostAt;
    Consumer<RunFact> onAppend = fact -> {};

    LosableJournal(InstantSource clock, int lostAt) {
        kept = new MemoryJournal(clock);
        this.lostAt = lostAt;
    }

    @Override
    @CanIgnoreReturnValue
    public Entry append(StreamName stream, Fact fact) {
        if (kept.last(stream) >= lostAt) {
            throw new JournalLost("the disk is full");
        }
        Entry entry = kept.append(stream, fact);
        onAppend.accept(RunNotation.decode(fact));
        return entry;
    }

    @Override
    public List<Entry> read(StreamName stream, long after, int most) {
        return kept.read(stream, after, most);
    }

    @Override
    public long last(StreamName stream) {
        return kept.last(stream);
    }

    @Override
    public List<StreamName> streams(String kind) {
        return kept.streams(kind);
    }

    List<Fact> facts() {
        return kept.read(Rig.STREAM, 0, Integer.MAX_VALUE).stream()
                .map(Entry::fact)
                .toList();
    }

    List<RunFact> runFacts() {
        return facts().stream().map(RunNotation::decode).toList();
    }

    @Override
    public void close() {
        kept.close();
    }
}
