// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.quantity.Quantity;
import java.util.List;

/**
 * All that came out of a job's recordings.
 *
 * @param objections what stands against issuing a certificate: an overdue reference, for example
 */
public record Results(
        Job job,
        List<Recording> recordings,
        List<PointResult> points,
        List<Hysteresis> hysteresis,
        List<String> objections) {
    public Results {
        recordings = List.copyOf(recordings);
        points = List.copyOf(points);
        hysteresis = List.copyOf(hysteresis);
        objections = List.copyOf(objections);
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
