// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.quantity.Phase;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The files that a plan names for its readings.
 *
 * @param instruments by their ids
 * @param clocks what is known of the instruments' clocks, by id
 * @param deposit what the reference's dew point is over, where its file does not say it
 */
public record Recorded(
        Source reference, Map<String, Source> instruments, Map<String, Clock> clocks, Optional<Phase> deposit) {
    public Recorded {
        instruments = Collections.unmodifiableMap(new LinkedHashMap<>(instruments));
        clocks = Map.copyOf(clocks);
    }

    /** An exported file and the profile that it is read by, named as from the plan's folder. */
    public record Source(String file, Optional<String> profile) {}
}
