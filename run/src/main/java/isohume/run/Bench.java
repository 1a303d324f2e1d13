// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Chamber;
import isohume.device.Instrument;
import isohume.device.Reading;
import java.util.ArrayList;
import java.util.List;

/**
 * A chamber with its reference instruments and what is in it for this run.
 *
 * @param instruments references and instruments under test
 */
public record Bench(Chamber chamber, List<Instrument> instruments) {
    public Bench {
        instruments = List.copyOf(instruments);
    }

    /** One poll of everything, chamber first. */
    List<Reading> read() {
        List<Reading> readings = new ArrayList<>(chamber.read());
        instruments.forEach(instrument -> readings.addAll(instrument.read()));
        return readings;
    }
}
