// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import java.util.ArrayList;
import java.util.List;

/** Stated uncertainty against temperature: straight lines between points, one statement for each stretch. */
final class UncertaintyTable {
    /** A stretch of temperatures, in degrees Celsius, over which one statement holds. */
    private record Stretch(
            double from,
            double to,
            double atFrom,
            double atTo,
            StatedUncertainty.Coverage coverage,
            Basis basis,
            String statement) {
        boolean holds(double celsius) {
            return celsius >= from - 1e-9 && celsius <= to + 1e-9;
        }

        StatedUncertainty at(double celsius) {
            double relative = from == to ? atFrom : atFrom + (atTo - atFrom) * (celsius - from) / (to - from);
            return new StatedUncertainty(relative, coverage, basis, statement);
        }
    }

    private final String what;
    private final List<Stretch> stretches;

    private UncertaintyTable(String what, List<Stretch> stretches) {
        this.what = what;
        this.stretches = stretches;
    }

    static UncertaintyTable of(String what) {
        return new UncertaintyTable("stated uncertainty of " + what, List.of());
    }

    /**
     * A statement over a stretch.
     *
     * @param points temperature in °C and relative uncertainty in turns, from cold to warm
     */
    UncertaintyTable with(StatedUncertainty.Coverage coverage, Basis basis, String statement, double... points) {
        List<Stretch> more = new ArrayList<>(stretches);
        for (int i = 0; i + 3 < points.length; i += 2) {
            more.add(new Stretch(points[i], points[i + 2], points[i + 1], points[i + 3], coverage, basis, statement));
        }
        return new UncertaintyTable(what, List.copyOf(more));
    }

    /** Where two stretches meet, the one that was added first; {@link OutsideRange} where nothing is stated. */
    StatedUncertainty at(double celsius) {
        for (Stretch stretch : stretches) {
            if (stretch.holds(celsius)) {
                return stretch.at(celsius);
            }
        }
        double lowest = stretches.stream().mapToDouble(Stretch::from).min().orElse(Double.NaN);
        double highest = stretches.stream().mapToDouble(Stretch::to).max().orElse(Double.NaN);
        throw new OutsideRange(what, celsius, lowest, highest, "°C");
    }
}
