// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A journal that is gone with the program: for trying something out, and for tests. Chained like one on disk. */
public final class MemoryJournal implements Journal {
    private final InstantSource clock;
    private final Map<StreamName, List<Entry>> streams = new LinkedHashMap<>();
    private boolean closed;

    public MemoryJournal(InstantSource clock) {
        this.clock = clock;
    }

    @Override
    @CanIgnoreReturnValue
    public synchronized Entry append(StreamName stream, Fact fact) {
        requireOpen();
        if (stream.kind().equals(Seal.STREAM.kind())) {
            throw new IllegalArgumentException("seals are set by the journal itself, not appended: " + stream);
        }
        List<Entry> entries = entries(stream);
        String previous =
                entries.isEmpty() ? Chain.BEGINNING : entries.getLast().hash();
        Entry entry = Chain.entry(previous, stream, entries.size() + 1L, Microseconds.of(clock.instant()), fact);
        streams.computeIfAbsent(stream, begun -> new ArrayList<>()).add(entry);
        return entry;
    }

    @Override
    public synchronized List<Entry> read(StreamName stream, long after, int most) {
        requireOpen();
        if (after < 0 || most < 0) {
            throw new IllegalArgumentException("after and most are 0 or more, were " + after + " and " + most);
        }
        List<Entry> entries = entries(stream);
        int from = (int) Math.min(after, entries.size());
        return List.copyOf(entries.subList(from, from + Math.min(most, entries.size() - from)));
    }

    @Override
    public synchronized long last(StreamName stream) {
        requireOpen();
        return entries(stream).size();
    }

    @Override
    public synchronized List<StreamName> streams(String kind) {
        requireOpen();
        return streams.keySet().stream()
                .filter(stream -> stream.kind().equals(kind))
                .toList();
    }

    @Override
    public synchronized void close() {
        closed = true;
    }

    private List<Entry> entries(StreamName stream) {
        return streams.getOrDefault(stream, List.of());
    }

    private void requireOpen() {
        if (closed) {
            throw new IllegalStateException("the journal in memory is closed");
        }
    }
}
