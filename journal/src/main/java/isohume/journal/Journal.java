// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.util.List;

/** Append-only streams of facts. Safe for any thread; appends are taken one after another. */
public interface Journal extends AutoCloseable {
    /**
     * Writes a fact behind the last one of its stream and returns when it is on disk.
     *
     * @throws JournalLost when it is not on disk
     */
    Entry append(StreamName stream, Fact fact);

    /** Entries with a number above {@code after}, in order, at most {@code most} of them. */
    List<Entry> read(StreamName stream, long after, int most);

    /** All streams of a kind, in the order in which they began. */
    List<StreamName> streams(String kind);

    @Override
    void close();
}
