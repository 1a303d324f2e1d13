// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.quantity.Phase;
import isohume.quantity.Quantity;
import isohume.result.PointResult;
import isohume.result.Specification;
import java.util.List;
import java.util.stream.Collectors;

/** What has to be said about results of one channel that are dew points, or that were derived. */
public final class DewPoints {
    private DewPoints() {}

    /** Sentences, one after the other; empty where nothing has to be said. */
    public static String remark(Specification channel, List<PointResult> points) {
        return (over(points) + " " + derived(channel)).strip();
    }

    private static String over(List<PointResult> points) {
        String frost = numbers(points, Phase.ICE);
        String dew = numbers(points, Phase.WATER);
        if (!frost.isEmpty() && !dew.isEmpty()) {
            return "Frost points, over ice: " + frost + ". Dew points, over water: " + dew + ".";
        }
        if (!frost.isEmpty()) {
            return "All are frost points, over ice.";
        }
        return dew.isEmpty() ? "" : "All are dew points, over water, also below 0 °C.";
    }

    private static String numbers(List<PointResult> points, Phase phase) {
        return points.stream()
                .filter(p -> p.over().filter(phase::equals).isPresent())
                .map(p -> "no. " + p.point().number())
                .collect(Collectors.joining(", "));
    }

    private static String derived(Specification channel) {
        return channel.derived()
                ? "Computed from the " + Names.of(channel.parent()) + " and the " + Names.of(Quantity.TEMPERATURE)
                        + " that the instrument showed at the same instants."
                : "";
    }
}
