// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.uncertainty.series.Drift;
import isohume.uncertainty.series.Series;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The paired readings that are being taken, and how much their noise leaves uncertain. */
final class RecordUnderWay {
    private static final int FEWEST = 4; // readings of which noise can be told from drift

    private final List<Watched> differences;
    private final Map<String, List<double[]>> pairs = new LinkedHashMap<>(); // seconds and difference, by channel
    private long first;
    private long last;
    private int rows;
    private Instant from = Instant.EPOCH;
    private Instant to = Instant.EPOCH;

    RecordUnderWay(Roles roles) {
        differences = Watched.all(roles).stream().filter(Watched::difference).toList();
        differences.forEach(d -> pairs.put(d.display(), new ArrayList<>()));
    }

    void clear() {
        rows = 0;
        pairs.values().forEach(List::clear);
    }

    void take(Moment moment, long number) {
        first = rows == 0 ? number : first;
        from = rows == 0 ? moment.at() : from;
        last = number;
        to = moment.at();
        rows++;
        double seconds = Duration.between(from, to).toMillis() / 1000.0;
        for (Watched one : differences) {
            one.source().in(moment).ifPresent(d -> pairs(one).add(new double[] {seconds, d}));
        }
    }

    private List<double[]> pairs(Watched one) {
        return pairs.computeIfAbsent(one.display(), id -> new ArrayList<>());
    }

    int rows() {
        return rows;
    }

    long first() {
        return first;
    }

    long last() {
        return last;
    }

    Duration length() {
        return Duration.between(from, to);
    }

    /** Whether more rows would not make the means any better worth having. */
    boolean enough(Rules rules, Settling settling) {
        if (rows < rules.leastReadings()) {
            return false;
        }
        return rows >= rules.mostReadings()
                || switch (settling) {
                    case FixedSettling fixed -> false;
                    case TailSettling tail ->
                        differences.stream().allMatch(d -> noise(d) <= rules.noiseShare() * tail.target(d));
                };
    }

    /** Standard uncertainty of a mean difference from noise, its drift apart; infinite while there are too few. */
    double noise(Watched one) {
        List<double[]> taken = pairs(one);
        if (taken.size() < FEWEST) {
            return Double.POSITIVE_INFINITY;
        }
        double[] seconds = taken.stream().mapToDouble(pair -> pair[0]).toArray();
        double[] values = taken.stream().mapToDouble(pair -> pair[1]).toArray();
        Drift drift = Series.of(seconds, values).drift();
        for (int i = 0; i < values.length; i++) {
            values[i] -= drift.slopePerSecond() * seconds[i];
        }
        return Series.of(seconds, values).standardUncertaintyOfMean();
    }
}
