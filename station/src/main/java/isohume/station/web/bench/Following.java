// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import isohume.station.web.Desk;
import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The runs that somebody looked at lately, so that their facts are not read from the first one each time. */
@Singleton
class Following {
    private static final int MOST = 8;

    private final Desk desk;
    private final Map<String, Followed> runs = new LinkedHashMap<>(MOST, 0.75f, true);

    Following(Desk desk) {
        this.desk = desk;
    }

    synchronized Followed run(String run) {
        Followed followed = runs.computeIfAbsent(run, Followed::new);
        if (runs.size() > MOST) {
            runs.remove(runs.keySet().iterator().next());
        }
        return followed;
    }

    /** The run on the bench as it is now; empty before the first. */
    Optional<BenchView> current() {
        return desk.current().flatMap(this::view);
    }

    Optional<BenchView> view(String run) {
        return BenchViews.of(run(run), desk);
    }
}
