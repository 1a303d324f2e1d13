// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.run.watch.Sighting;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Faults that are there, and the latest that were. */
final class Incidents {
    private static final int MOST_PAST = 100; // the journal has them all

    private final Map<Sighting.Key, Incident> present = new LinkedHashMap<>();
    private final List<Incident> past = new ArrayList<>();

    void take(RunFact.Noticed noticed, Instant at) {
        present.put(
                new Sighting.Key(noticed.fault(), noticed.channel()),
                new Incident(noticed, at, Optional.empty(), Optional.empty()));
    }

    void take(RunFact.Acted acted) {
        present.computeIfPresent(
                new Sighting.Key(acted.fault(), acted.channel()),
                (key, i) -> new Incident(i.noticed(), i.at(), Optional.of(acted), i.over()));
    }

    void take(RunFact.Over over, Instant at) {
        Incident gone = present.remove(new Sighting.Key(over.fault(), over.channel()));
        if (gone != null) {
            keep(new Incident(gone.noticed(), gone.at(), gone.acted(), Optional.of(at)));
        }
    }

    /** An engine begins anew: what is still there it will see again. */
    void forget() {
        present.values().forEach(this::keep);
        present.clear();
    }

    /** What was done is done; whatever is still there is judged anew. */
    void rearm() {
        present.replaceAll((key, i) -> new Incident(i.noticed(), i.at(), Optional.empty(), i.over()));
    }

    private void keep(Incident incident) {
        past.add(incident);
        if (past.size() > MOST_PAST) {
            past.removeFirst();
        }
    }

    Map<Sighting.Key, Incident> present() {
        return Collections.unmodifiableMap(present);
    }

    /** Earliest first. */
    List<Incident> all() {
        List<Incident> all = new ArrayList<>(past);
        all.addAll(present.values());
        return all;
    }

    /** Whether readings may not be used now. */
    boolean touching() {
        return present.values().stream().anyMatch(i -> i.noticed().fault().touches());
    }
}
