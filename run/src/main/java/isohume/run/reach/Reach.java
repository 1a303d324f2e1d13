// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;

/**
 * What a bench says of itself: the chamber's own range, its two streams, its surfaces, and the ranges of what measures in
 * it.
 *
 * @param coldest lowest chamber temperature
 * @param warmest highest chamber temperature
 * @param lowest lowest relative humidity of the chamber's own range
 * @param highest highest relative humidity of the chamber's own range
 * @param ranges of references and instruments; a condition outside one of them is not measured there
 */
public record Reach(
        Temperature coldest,
        Temperature warmest,
        RelativeHumidity lowest,
        RelativeHumidity highest,
        Streams streams,
        Surfaces surfaces,
        List<Range> ranges) {
    public Reach {
        ranges = List.copyOf(ranges);
        if (coldest.compareTo(warmest) >= 0 || lowest.compareTo(highest) >= 0) {
            throw new IllegalArgumentException("a range has a lower and a higher end, were " + coldest.celsius()
                    + " and " + warmest.celsius() + " °C, " + lowest.percent() + " and " + highest.percent() + " % RH");
        }
    }

    /** The same chamber with its streams as they are now: an old drying agent, a saturator that is not warm yet. */
    public Reach with(Streams present) {
        return new Reach(coldest, warmest, lowest, highest, present, surfaces, ranges);
    }

    /** The same chamber with further ranges. */
    public Reach and(List<Range> more) {
        List<Range> all = new ArrayList<>(ranges);
        all.addAll(more);
        return new Reach(coldest, warmest, lowest, highest, streams, surfaces, all);
    }
}
