// SPDX-License-Identifier: Apache-2.0
package isohume.run.lease;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A chamber's lease as the journal has it. */
final class Records {
    private static final int PAGE = 500;

    private final Journal journal;
    private final StreamName stream;
    private final String chamber;
    private final Holder holder;
    private final InstantSource clock;
    private Instant until = Instant.MIN;

    Records(Journal journal, String chamber, Holder holder, InstantSource clock) {
        this.journal = journal;
        this.stream = new StreamName("lease", Lease.key(chamber));
        this.chamber = chamber;
        this.holder = holder;
        this.clock = clock;
    }

    /** Two may look at the same time and both find it free: whoever comes first in the stream has it. */
    void take() {
        Entry mine = write();
        try {
            requireFree(inForce(mine.number() - 1));
        } catch (LeaseRefused late) {
            release();
            throw late;
        }
    }

    void requireFree() {
        requireFree(inForce(Long.MAX_VALUE));
    }

    void renew() {
        if (clock.instant().isAfter(until.minus(Lease.TERM.dividedBy(2)))) {
            write();
        }
    }

    void release() {
        journal.append(stream, LeaseFact.encode(new LeaseFact.Released(holder.words())));
    }

    /** A lease of this machine whose lock is free belongs to a program that is no more. */
    private void requireFree(Optional<LeaseFact.Taken> present) {
        if (present.isEmpty()) {
            return;
        }
        boolean own = present.get().holder().equals(holder.words());
        if (own || !present.get().machine().equals(holder.machine())) {
            throw new LeaseRefused("The chamber " + chamber + " is in use by "
                    + present.get().holder() + "; its lease runs until "
                    + present.get().until()
                    + " unless it is renewed. Close that program, or wait until then.");
        }
    }

    /** The lease that runs now, by the facts up to that number. */
    private Optional<LeaseFact.Taken> inForce(long upTo) {
        LeaseFact.@Nullable Taken present = null;
        long after = Math.max(0, Math.min(upTo, journal.last(stream)) - PAGE);
        List<Entry> entries = journal.read(stream, after, PAGE);
        for (Entry entry : entries) {
            if (entry.number() <= upTo) {
                present = switch (LeaseFact.decode(entry.fact())) {
                    case LeaseFact.Taken taken -> first(present, taken, entry.at());
                    case LeaseFact.Released released ->
                        present != null && present.holder().equals(released.holder()) ? null : present;
                };
            }
        }
        return present != null && present.until().isAfter(clock.instant()) ? Optional.of(present) : Optional.empty();
    }

    private static LeaseFact.Taken first(LeaseFact.@Nullable Taken before, LeaseFact.Taken after, Instant at) {
        if (before == null
                || before.holder().equals(after.holder())
                || before.machine().equals(after.machine())) {
            return after;
        }
        return before.until().isAfter(at) ? before : after;
    }

    @CanIgnoreReturnValue
    private Entry write() {
        until = clock.instant().plus(Lease.TERM);
        return journal.append(
                stream, LeaseFact.encode(new LeaseFact.Taken(holder.words(), holder.machine(), chamber, until)));
    }
}
