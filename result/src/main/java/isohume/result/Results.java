// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.quantity.Quantity;
import java.util.List;

/** All that came out of a job's recordings. */
public record Results(Job job, List<Recording> recordings, List<PointResult> points, List<Hysteresis> hysteresis) {
    public Results {
        recordings = List.copyOf(recordings);
        points = List.copyOf(points);
        hysteresis = List.copyOf(hysteresis);
    }

    /**
     * How far descending and ascending errors lie apart at one condition; reported, and not part of U, since each
     * direction has its own result.
     */
    public record Hysteresis(
            String instrument, Quantity quantity, double celsius, double humidityPercent, double difference) {}

    public List<PointResult> of(String instrument) {
        return points.stream().filter(p -> p.instrument().equals(instrument)).toList();
    }
}
