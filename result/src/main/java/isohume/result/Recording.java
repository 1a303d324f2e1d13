// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.quantity.Phase;
import isohume.quantity.Point;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * The paired readings of one point, reference and instruments within seconds of each other.
 *
 * @param deposit the phase on the mirror while recording
 * @param depositBy who decided on the phase: the mirror's own report, an operator, the file
 * @param rows in order of time, at least one
 * @param toCome what each channel had still to change against the reference, by {@code instrument/quantity_key}; a
 *     channel of which nothing but its readings is known is missing
 */
public record Recording(Point point, Phase deposit, String depositBy, List<Row> rows, Map<String, StillToCome> toCome) {
    /** Readings of which nothing is known beside them. */
    public Recording(Point point, Phase deposit, String depositBy, List<Row> rows) {
        this(point, deposit, depositBy, rows, Map.of());
    }

    public Recording {
        toCome = Map.copyOf(toCome);
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("point " + point.number() + " has no readings");
        }
    }

    /** The same with some of its rows only. */
    Recording of(List<Row> some) {
        return new Recording(point, deposit, depositBy, some, toCome);
    }

    /**
     * One moment. References as they showed, before any correction.
     *
     * @param dewPoint at the mirror, °C; a frost point when the deposit is ice
     * @param temperature of the chamber's air, °C
     * @param pressure in the chamber, Pa
     * @param mirrorPressure at the mirror, Pa
     * @param shown what instruments under test showed, by {@code instrument/quantity_key}, in the quantity's unit; a gap
     *     is a missing key
     */
    public record Row(
            Instant at,
            double dewPoint,
            double temperature,
            double pressure,
            double mirrorPressure,
            Map<String, Double> shown) {
        public Row {
            shown = Map.copyOf(shown);
        }
    }
}
