// SPDX-License-Identifier: Apache-2.0
package isohume.device.trial;

import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.driver.DeviceDescription;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What a device gave over a number of reads. One thread at a time. */
public final class Trial {
    private final DeviceDescription description;
    private final Map<String, ChannelTrial> channels = new LinkedHashMap<>();
    private final List<Long> latencies = new ArrayList<>();
    private int reads;

    /** Nothing was read yet. */
    public Trial(DeviceDescription description) {
        this.description = description;
        for (Channel channel : description.channels()) {
            BigDecimal resolution = description.resolution(channel.name()).orElse(BigDecimal.ONE);
            channels.put(channel.name(), new ChannelTrial(channel, resolution));
        }
    }

    /**
     * Takes one read.
     *
     * @param nanos when it was whole, on a steady counter
     * @param took how long it took
     */
    public void add(List<Reading> readings, long nanos, Duration took) {
        latencies.add(took.toNanos());
        add(readings, nanos);
    }

    /** Takes one read of which nobody knows how long it took. */
    public void add(List<Reading> readings, long nanos) {
        reads++;
        for (Reading reading : readings) {
            ChannelTrial channel = channels.get(reading.channel().name());
            if (channel != null) {
                channel.add(reading, nanos);
            }
        }
    }

    /** How often it was read. */
    public int reads() {
        return reads;
    }

    /** Whether it is known how long reads took. */
    public boolean timed() {
        return !latencies.isEmpty();
    }

    /** What each channel gave, in the description's order. */
    public List<ChannelTrial> channels() {
        return List.copyOf(channels.values());
    }

    /** The time that half of the reads took at most, in milliseconds; 0 if that is not known. */
    public double medianMillis() {
        List<Long> sorted = latencies.stream().sorted().toList();
        return sorted.isEmpty() ? 0 : sorted.get(sorted.size() / 2) / 1e6;
    }

    /** The time that the longest read took, in milliseconds; 0 if that is not known. */
    public double longestMillis() {
        return latencies.stream().mapToLong(Long::longValue).max().orElse(0) / 1e6;
    }

    /** Whether the last read gave a value on every channel. */
    public boolean good() {
        return reads() > 0 && channels().stream().allMatch(ChannelTrial::lastWasValue);
    }

    /** What is wrong or worth knowing, in plain words; nothing if all is well. */
    public List<String> findings() {
        List<String> found = new ArrayList<>();
        if (reads() == 0) {
            found.add("It was not read at all.");
        }
        List<String> troubles = channels().stream()
                .flatMap(one -> one.troubles().stream())
                .distinct()
                .toList();
        found.addAll(troubles);
        long limit = description.timeLimit().toMillis();
        if (troubles.isEmpty() && longestMillis() > 0.7 * limit) {
            found.add(String.format(
                    Locale.ROOT,
                    "The longest read took %.0f ms of the %d ms that the description allows; write a larger timeout-ms.",
                    longestMillis(),
                    limit));
        }
        channels().forEach(one -> found.addAll(one.remarks()));
        return found;
    }
}
