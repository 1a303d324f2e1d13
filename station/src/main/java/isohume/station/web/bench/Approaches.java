// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import isohume.run.Phase;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How long the points of this run took from their target to their record, apart from the soak itself. */
public final class Approaches {
    private final Map<Integer, Duration> byPoint = new HashMap<>();
    private int point;
    private @Nullable Instant approachingSince;

    /** The run passed into a phase. */
    public void entered(Phase phase, int number, Instant at) {
        if (approachingSince != null) {
            byPoint.merge(point, Duration.between(approachingSince, at), Duration::plus);
        }
        point = number;
        approachingSince = phase == Phase.APPROACH ? at : null;
    }

    /** The longest of those points that satisfy a condition; empty when none was done yet. */
    Optional<Duration> longest(java.util.function.IntPredicate points) {
        return byPoint.entrySet().stream()
                .filter(e -> points.test(e.getKey()))
                .map(Map.Entry::getValue)
                .max(Duration::compareTo);
    }
}
