// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Chamber;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.run.reach.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A chamber with its reference instruments and what is in it for this run.
 *
 * @param instruments references and instruments under test
 * @param way how the chamber gets from one condition to another without condensation; straight where nothing is known of it
 */
public record Bench(Chamber chamber, List<Instrument> instruments, Optional<Way> way) {
    public Bench {
        instruments = List.copyOf(instruments);
    }

    /** A bench of whose surfaces nothing is known. */
    public Bench(Chamber chamber, List<Instrument> instruments) {
        this(chamber, instruments, Optional.empty());
    }

    /** One poll of everything, chamber first. */
    List<Reading> read() {
        List<Reading> readings = new ArrayList<>(chamber.read());
        instruments.forEach(instrument -> readings.addAll(instrument.read()));
        return readings;
    }
}
