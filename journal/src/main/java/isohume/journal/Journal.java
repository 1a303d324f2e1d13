// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import java.util.List;

/**
 * Append-only streams of facts. Safe for any thread; appends are taken one after another, readers do not hold them up.
 * After {@link #close} every call but another close throws {@link IllegalStateException}.
 */
public interface Journal extends AutoCloseable {
    /**
     * Writes a fact behind the last one of its stream and returns when it is on disk. Entries are in the order of
     * their numbers; a clock that steps backwards is written down as it is.
     *
     * @throws JournalLost when it is not on disk; the stream is then as it was before, and a later append may succeed
     * @throws IllegalArgumentException for a stream of the kind {@code seal}, which the journal writes itself
     */
    @CanIgnoreReturnValue
    Entry append(StreamName stream, Fact fact);

    /**
     * Entries with a number above {@code after}, in order, at most {@code most} of them; none for a stream that has
     * not begun. To go through a long stream, ask again behind the last number received.
     *
     * @param after 0 or more
     * @param most 0 or more
     * @throws JournalLost when they cannot be read, or are not what was once acknowledged
     */
    List<Entry> read(StreamName stream, long after, int most);

    /** The number of the stream's last entry, 0 for a stream that has not begun. */
    long last(StreamName stream);

    /** All streams of a kind, in the order in which they began. */
    List<StreamName> streams(String kind);

    @Override
    void close();
}
