// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.journal.Entry;
import isohume.journal.Fact;
import isohume.journal.Journal;
import isohume.journal.Relay;
import isohume.journal.StreamName;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.function.Consumer;

/** A journal that tells a listener of each entry once it is on disk. A listener's trouble never reaches the writer. */
public final class Overheard extends Relay {
    private static final Logger LOG = System.getLogger(Overheard.class.getName());

    private final Consumer<Entry> listener;

    public Overheard(Journal journal, Consumer<Entry> listener) {
        super(journal);
        this.listener = listener;
    }

    @Override
    public Entry append(StreamName stream, Fact fact) {
        Entry entry = super.append(stream, fact);
        try {
            listener.accept(entry);
        } catch (RuntimeException trouble) {
            LOG.log(Level.WARNING, "a reader of " + stream + " failed at entry " + entry.number(), trouble);
        }
        return entry;
    }
}
