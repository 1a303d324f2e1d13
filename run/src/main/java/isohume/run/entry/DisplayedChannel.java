// SPDX-License-Identifier: Apache-2.0
package isohume.run.entry;

import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.time.Duration;

/**
 * A channel of an instrument under test that has nothing but a display.
 *
 * @param id {@code instrument/quantity_key}
 * @param resolution the step of its last digit, in the quantity's unit; above 0
 * @param update how often it shows something new
 * @param entries how many readings of it are wanted at each point, at least 2
 * @param toleranceConstant a in ±(a + b·|reading|), in the quantity's difference unit
 * @param toleranceShare b in ±(a + b·|reading|), a plain number
 */
public record DisplayedChannel(
        String id,
        BigDecimal resolution,
        Duration update,
        int entries,
        double toleranceConstant,
        double toleranceShare) {
    /** Common practice, no source: displays of handheld instruments are renewed every half to two seconds. */
    public static final Duration USUAL_UPDATE = Duration.ofSeconds(2);

    /** Common practice, no source. */
    public static final int USUAL_ENTRIES = 5;

    /** As with any mean of which the noise is to be known. */
    public static final int FEWEST_ENTRIES = 2;

    public DisplayedChannel {
        if (id.indexOf('/') < 1 || resolution.signum() <= 0 || update.isNegative() || entries < FEWEST_ENTRIES) {
            throw new IllegalArgumentException(
                    "a display has an instrument, a last digit above 0, an update time and at least " + FEWEST_ENTRIES
                            + " entries, was " + id + ", " + resolution + ", " + update + ", " + entries);
        }
    }

    public String instrument() {
        return id.substring(0, id.indexOf('/'));
    }

    public Quantity quantity() {
        return Quantity.ofKey(id.substring(id.indexOf('/') + 1));
    }

    /** How many decimals it shows. */
    public int decimals() {
        return Math.max(0, resolution.stripTrailingZeros().scale());
    }

    double toleranceAt(double reading) {
        return toleranceConstant + toleranceShare * Math.abs(reading);
    }
}
