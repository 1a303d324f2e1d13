// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.endurance;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.journal.Entry;
import isohume.journal.Fact;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import java.time.InstantSource;
import java.util.List;

/** A journal that numbers facts and keeps none, so that what the program itself holds can be seen. */
final class Forgetting implements Journal {
    private final InstantSource clock;
    private long last;

    Forgetting(InstantSource clock) {
        this.clock = clock;
    }

    @Override
    @CanIgnoreReturnValue
    public Entry append(StreamName stream, Fact fact) {
        last++;
        return new Entry(stream, last, clock.instant(), fact, "");
    }

    @Override
    public List<Entry> read(StreamName stream, long after, int most) {
        return List.of();
    }

    @Override
    public long last(StreamName stream) {
        return last;
    }

    @Override
    public List<StreamName> streams(String kind) {
        return List.of();
    }

    @Override
    public void close() {}
}
