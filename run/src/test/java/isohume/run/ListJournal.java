// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.journal.Entry;
import isohume.journal.Fact;
import isohume.journal.Journal;
import isohume.journal.JournalLost;
import isohume.journal.StreamName;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** One stream in memory, which is lost at a chosen append. */
final class ListJournal implements Journal {
    private final List<Entry> entries = new ArrayList<>();
    private final InstantSource clock;
    private final int lostAt;
    Consumer<RunFact> onAppend = fact -> {};

    ListJournal(InstantSource clock, int lostAt) {
        this.clock = clock;
        this.lostAt = lostAt;
    }

    @Override
    @CanIgnoreReturnValue
    public Entry append(StreamName stream, Fact fact) {
        if (entries.size() >= lostAt) {
            throw new JournalLost("the disk is full");
        }
        Entry entry = new Entry(stream, entries.size() + 1, clock.instant(), fact, "");
        entries.add(entry);
        onAppend.accept(RunNotation.decode(fact));
        return entry;
    }

    @Override
    public List<Entry> read(StreamName stream, long after, int most) {
        return entries.stream().skip(after).limit(most).toList();
    }

    @Override
    public long last(StreamName stream) {
        return entries.size();
    }

    @Override
    public List<StreamName> streams(String kind) {
        return entries.isEmpty() ? List.of() : List.of(entries.getFirst().stream());
    }

    List<Fact> facts() {
        return entries.stream().map(Entry::fact).toList();
    }

    List<RunFact> runFacts() {
        return facts().stream().map(RunNotation::decode).toList();
    }

    @Override
    public void close() {}
}
