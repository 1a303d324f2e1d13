// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import java.time.Duration;
import java.util.List;

/** Foresight from what this run has seen: the median of its points of the same kind, at a new temperature or not. */
public final class SeenSoFar implements Foresight {
    // before any of a kind was seen; common practice, no source
    private static final Length NEW_HUMIDITY = new Length(Duration.ofMinutes(20), Duration.ofMinutes(8));
    private static final Length NEW_TEMPERATURE = new Length(Duration.ofMinutes(50), Duration.ofMinutes(20));
    private static final double FEW = 0.3; // spread of a single one, as a share of it

    @Override
    public Length ofPoint(Course course, int number) {
        boolean warms = course.plan().changesTemperature(number);
        List<Duration> seen = course.took().entrySet().stream()
                .filter(e -> course.plan().changesTemperature(e.getKey()) == warms)
                .map(java.util.Map.Entry::getValue)
                .sorted()
                .toList();
        if (seen.isEmpty()) {
            return warms ? NEW_TEMPERATURE : NEW_HUMIDITY;
        }
        Duration median = seen.get(seen.size() / 2);
        return new Length(median, spread(seen, median));
    }

    /** From the middle half, as of a normal distribution. */
    private static Duration spread(List<Duration> seen, Duration median) {
        if (seen.size() < 4) {
            return Duration.ofMillis(Math.round(FEW * median.toMillis()));
        }
        Duration middle = seen.get(3 * seen.size() / 4).minus(seen.get(seen.size() / 4));
        return Duration.ofMillis(Math.round(middle.toMillis() / 1.35));
    }
}
