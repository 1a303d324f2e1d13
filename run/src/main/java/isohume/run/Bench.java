// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Chamber;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.run.reach.Way;
import isohume.run.watch.Bounds;
import isohume.run.watch.Policies;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A chamber with its reference instruments and what is in it for this run.
 *
 * @param instruments references and instruments under test
 * @param bounds from where on something on it counts as a fault
 * @param policies what is done about a fault
 * @param way how the chamber gets from one condition to another without condensation; straight where nothing is known of it
 */
public record Bench(
        Chamber chamber, List<Instrument> instruments, Bounds bounds, Policies policies, Optional<Way> way) {
    public Bench {
        instruments = List.copyOf(instruments);
    }

    /** A bench that is watched as usual, and of whose surfaces nothing is known. */
    public Bench(Chamber chamber, List<Instrument> instruments) {
        this(chamber, instruments, Bounds.usual(), Policies.usual(), Optional.empty());
    }

    /** One poll of everything, chamber first. */
    List<Reading> read() {
        List<Reading> readings = new ArrayList<>(chamber.read());
        instruments.forEach(instrument -> readings.addAll(instrument.read()));
        return readings;
    }

    /** The same bench, watched otherwise. */
    public Bench watched(Bounds others, Policies otherPolicies) {
        return new Bench(chamber, instruments, others, otherPolicies, way);
    }

    /** The same bench, of which it is known how to get from one condition to another. */
    public Bench going(Way known) {
        return new Bench(chamber, instruments, bounds, policies, Optional.of(known));
    }
}
