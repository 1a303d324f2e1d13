// SPDX-License-Identifier: Apache-2.0
package isohume.run.lease;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.journal.Journal;
import isohume.journal.MemoryJournal;
import isohume.journal.StreamName;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Other programs of this machine are tried by {@code benchmarks/faults}, which starts them. */
class LeaseTest {
    private static final String CHAMBER = "192.0.2.7:502 unit 1";
    private static final Holder FIRST = new Holder("first, process 1", "here");

    @TempDir
    private Path locks;

    private Instant now = Instant.parse("2026-03-02T08:00:00Z");
    private final Journal journal = new MemoryJournal(() -> now);

    private Lease take(Holder holder) {
        return Lease.take(journal, CHAMBER, holder, locks.resolve(holder.machine()), () -> now);
    }

    @Test
    void a_chamber_that_another_machine_has_is_refused_and_its_holder_named() {
        try (Lease first = take(FIRST)) {
            first.renew();
            LeaseRefused refused = assertThrows(LeaseRefused.class, () -> take(new Holder("second", "elsewhere")));
            assertTrue(String.valueOf(refused.getMessage()).contains("first, process 1 on here"));
        }
    }

    @Test
    void a_lease_that_was_given_back_is_free() {
        take(FIRST).close();
        try (Lease second = take(new Holder("second", "elsewhere"))) {
            second.renew();
        }
    }

    @Test
    void a_lease_of_another_machine_that_was_not_renewed_ends_by_itself() {
        try (Lease first = take(FIRST)) {
            now = now.plus(Lease.TERM).plusSeconds(1);
            try (Lease second = take(new Holder("second", "elsewhere"))) {
                second.renew();
            }
            first.renew();
        }
    }

    @Test
    void one_that_was_renewed_does_not() {
        try (Lease first = take(FIRST)) {
            now = now.plus(Duration.ofMinutes(6));
            first.renew();
            now = now.plus(Duration.ofMinutes(6));
            assertThrows(LeaseRefused.class, () -> take(new Holder("second", "elsewhere")));
        }
    }

    @Test
    void a_program_of_this_machine_that_is_no_more_blocks_nobody() {
        long before = journal.last(new StreamName("lease", "192.0.2.7_502_unit_1"));
        try (Lease killed = Lease.take(journal, CHAMBER, FIRST, locks.resolve("gone"), () -> now);
                Lease next = take(new Holder("first again, process 1", "here"))) {
            killed.renew();
            next.renew();
        }
        assertEquals(0, before);
    }

    @Test
    void the_same_program_cannot_take_it_twice() {
        try (Lease first = take(FIRST)) {
            assertThrows(LeaseRefused.class, () -> take(FIRST));
            first.renew();
        }
    }
}
