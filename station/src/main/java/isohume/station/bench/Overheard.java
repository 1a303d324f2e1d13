// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.journal.Entry;
import isohume.journal.Fact;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.List;
import java.util.function.Consumer;

/** A journal that tells a listener of each entry once it is on disk. A listener's trouble never reaches the writer. */
public final class Overheard implements Journal {
    private static final Logger LOG = System.getLogger(Overheard.class.getName());

    private final Journal journal;
    private final Consumer<Entry> listener;

    public Overheard(Journal journal, Consumer<Entry> listener) {
        this.journal = journal;
        this.listener = listener;
    }

    @Override
    public Entry append(StreamName stream, Fact fact) {
        Entry entry = journal.append(stream, fact);
        try {
            listener.accept(entry);
        } catch (RuntimeException trouble) {
            LOG.log(Level.WARNING, "a reader of " + stream + " failed at entry " + entry.number(), trouble);
        }
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
