// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Chamber;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.run.watch.Bounds;
import isohume.run.watch.Policies;
import java.util.ArrayList;
import java.util.List;

/**
 * A chamber with its reference instruments and what is in it for this run.
 *
 * @param instruments references and instruments under test
 * @param bounds from where on something on it counts as a fault
 * @param policies what is done about a fault
 */
public record Bench(Chamber chamber, List<Instrument> instruments, Bounds bounds, Policies policies) {
    public Bench {
        instruments = List.copyOf(instruments);
    }

    /** A bench that is watched as usual. */
    public Bench(Chamber chamber, List<Instrument> instruments) {
        this(chamber, instruments, Bounds.usual(), Policies.usual());
    }

    /** One poll of everything, chamber first. */
    List<Reading> read() {
        List<Reading> readings = new ArrayList<>(chamber.read());
        instruments.forEach(instrument -> readings.addAll(instrument.read()));
        return readings;
    }

    /** The same bench, watched otherwise. */
    public Bench watched(Bounds others, Policies otherPolicies) {
        return new Bench(chamber, instruments, others, otherPolicies);
    }
}
