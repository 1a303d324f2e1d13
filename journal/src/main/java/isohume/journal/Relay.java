// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import java.util.List;

/** A journal that passes everything on to another, for those who add something to one of its acts. */
public abstract class Relay implements Journal {
    private final Journal journal;

    protected Relay(Journal journal) {
        this.journal = journal;
    }

    @Override
    @CanIgnoreReturnValue
    public Entry append(StreamName stream, Fact fact) {
        return journal.append(stream, fact);
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
