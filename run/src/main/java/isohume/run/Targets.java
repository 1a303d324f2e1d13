// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The expanded uncertainty that each result of a run is to have. Waiting and reading are measured by it.
 *
 * @param byChannel for each channel of an instrument the points' uncertainties in the order of the plan, in its
 *     quantity's difference unit
 */
public record Targets(Map<String, List<Double>> byChannel) {
    public Targets {
        Map<String, List<Double>> kept = new TreeMap<>();
        byChannel.forEach((channel, points) -> {
            for (double expanded : points) {
                if (!(expanded > 0) || Double.isInfinite(expanded)) {
                    throw new IllegalArgumentException(
                            "an uncertainty to reach must be finite and positive, was " + expanded + " of " + channel);
                }
            }
            kept.put(channel, List.copyOf(points));
        });
        byChannel = java.util.Collections.unmodifiableMap(kept);
    }

    /** None known. */
    public static Targets none() {
        return new Targets(Map.of());
    }

    /** Of a channel at a point; empty when none is known. */
    OptionalDouble of(String channel, int point) {
        List<Double> points = byChannel.getOrDefault(channel, List.of());
        return point >= 1 && point <= points.size() ? OptionalDouble.of(points.get(point - 1)) : OptionalDouble.empty();
    }
}
