// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import java.time.Instant;
import java.util.Optional;

/**
 * A fault from its first sign to its end.
 *
 * @param at when it was noticed
 * @param acted what was done about it, once it had lasted too long
 * @param over when it was over; empty while it is there, or when the run ended before it
 */
public record Incident(RunFact.Noticed noticed, Instant at, Optional<RunFact.Acted> acted, Optional<Instant> over) {

    /** What happened, in words: {@code mirror/dew_point stands still: 12.31 °C for 300 s}. */
    public String words() {
        return noticed.channel() + " " + noticed.fault().words() + ": " + noticed.evidence();
    }
}
