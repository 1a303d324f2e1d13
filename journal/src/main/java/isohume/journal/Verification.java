// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What checking every hash of a journal found. */
public sealed interface Verification {
    /**
     * Nothing is missing and nothing was changed, as far as the file alone can tell: facts behind the last seal could
     * have been cut off at the end of a stream, and someone with this program could have chained everything anew. A
     * seal noted elsewhere rules both out for everything before it.
     *
     * @param streams number of streams, the seals' own included
     * @param facts number of facts, seals included
     * @param sealed how many of the facts lie under a seal
     * @param lastSeal none in a journal that was never sealed
     */
    record Whole(
            long streams, long facts, long sealed, @Nullable Seal lastSeal) implements Verification {}

    /**
     * Something is not what was acknowledged.
     *
     * @param findings at least one, in the order found; after {@link #MOST_FINDINGS} one that says there are more
     */
    record Broken(List<Finding> findings) implements Verification {
        public Broken {
            findings = List.copyOf(findings);
        }
    }

    /**
     * One thing that is wrong.
     *
     * @param stream its name as it stands in the file; empty when the file as a whole is meant
     * @param number of the entry, 0 when the stream or the file as a whole is meant
     * @param what in plain words
     */
    record Finding(String stream, long number, String what) {
        @Override
        public String toString() {
            return (stream.isEmpty() ? "" : stream + (number == 0 ? ": " : ", entry " + number + ": ")) + what;
        }
    }

    /** Findings that are listed one by one. */
    int MOST_FINDINGS = 1_000;

    /**
     * Checks a file without changing it, also while other programs write to it; it then speaks about one moment.
     *
     * @param noted seals written down elsewhere, which the file must still have
     * @throws JournalLost when the file cannot be looked at, because it is locked, or may not be read
     */
    static Verification of(Path file, Seal... noted) {
        return Verifier.verify(file, List.of(noted));
    }
}
