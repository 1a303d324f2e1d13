// SPDX-License-Identifier: Apache-2.0
package isohume.station.trial;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.driver.DeviceDescription;
import isohume.device.trial.ChannelTrial;
import isohume.device.trial.Trial;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What a trial has found by one moment.
 *
 * @param good whether the last read gave a value on every channel
 * @param latency empty if it is not known how long reads took
 * @param channels in the description's order
 * @param findings what is wrong or worth knowing, in plain words; none if all is well
 */
public record Report(int reads, boolean good, Optional<Latency> latency, List<Row> channels, List<String> findings) {
    public Report {
        channels = List.copyOf(channels);
        findings = List.copyOf(findings);
    }

    /** How long reads took, in milliseconds. */
    public record Latency(double median, double longest) {}

    /**
     * What one channel gave.
     *
     * @param values how many reads gave a value, doubtful ones included
     * @param absent how many gave none
     * @param step the smallest change that was seen, in the quantity's difference unit
     * @param secondsBetweenChanges the mean
     */
    public record Row(
            Channel channel,
            Optional<Reading> last,
            int values,
            int absent,
            Optional<BigDecimal> step,
            Optional<Double> secondsBetweenChanges) {
        private static Row of(ChannelTrial one) {
            return new Row(
                    one.channel(), one.last(), one.values(), one.absent(), one.step(), one.secondsBetweenChanges());
        }
    }

    /** By the thread that the trial belongs to. */
    public static Report of(Trial trial) {
        return new Report(
                trial.reads(),
                trial.good(),
                trial.timed()
                        ? Optional.of(new Latency(trial.medianMillis(), trial.longestMillis()))
                        : Optional.empty(),
                trial.channels().stream().map(Row::of).toList(),
                trial.findings());
    }

    /** As the command prints it and the program serves it. */
    public ObjectNode json(DeviceDescription description) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("device", description.id()).put("title", description.title()).put("place", description.place());
        node.put("reads", reads).put("good", good);
        latency.ifPresent(took -> node.put("median_ms", took.median()).put("longest_ms", took.longest()));
        for (Row row : channels) {
            ObjectNode channel = node.withArray("/channels").addObject();
            channel.put("name", row.channel().name())
                    .put("quantity", row.channel().quantity().key())
                    .put("unit", row.channel().quantity().unit())
                    .put("values", row.values())
                    .put("absent", row.absent());
            row.step().ifPresent(step -> channel.put("smallest_step", step));
            row.secondsBetweenChanges().ifPresent(time -> channel.put("seconds_between_changes", time));
            row.last().ifPresent(last -> channel.put("last", Attempt.inWords(last)));
        }
        node.withArray("/findings");
        findings.forEach(finding -> node.withArray("/findings").add(finding));
        return node;
    }
}
