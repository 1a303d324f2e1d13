// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All that is looked for, one poll at a time. A fault counts as over once three polls have been without it. */
public final class Watch {
    private static final int POLLS_UNTIL_OVER = 3;

    private final List<Detector> detectors;
    private final Map<Sighting.Key, Sighting> present = new LinkedHashMap<>();
    private final Map<Sighting.Key, Integer> without = new HashMap<>();

    public Watch(Channels channels, Bounds bounds) {
        detectors = List.of(
                new Gaps(channels),
                new Flags(channels, bounds),
                new Frozen(channels, bounds),
                new Agreement(channels, bounds),
                new Draught(channels),
                new Astray(channels, bounds),
                new Undecided(channels, bounds),
                new Supplies(channels, bounds));
    }

    /** What is wrong now; each fault of each channel once. */
    public List<Sighting> look(Poll poll) {
        Map<Sighting.Key, Sighting> seen = new LinkedHashMap<>();
        detectors.forEach(detector -> detector.look(poll, sighting -> seen.putIfAbsent(sighting.key(), sighting)));
        seen.forEach((key, sighting) -> {
            present.putIfAbsent(key, sighting);
            without.put(key, 0);
        });
        Iterator<Sighting.Key> known = present.keySet().iterator();
        while (known.hasNext()) {
            Sighting.Key key = known.next();
            if (!seen.containsKey(key) && without.merge(key, 1, Integer::sum) >= POLLS_UNTIL_OVER) {
                known.remove();
            }
        }
        return new ArrayList<>(present.values());
    }

    /** Another target was set. */
    public void retarget() {
        detectors.forEach(Detector::retarget);
    }
}
