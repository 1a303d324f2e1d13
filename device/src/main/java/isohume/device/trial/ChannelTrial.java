// SPDX-License-Identifier: Apache-2.0
package isohume.device.trial;

import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a channel gave over a number of reads. */
public final class ChannelTrial {
    private static final int ENOUGH = 20; // reads, before anything is said of values that never change
    private static final int ENOUGH_CHANGES = 8; // by chance all even in 1 of 256 cases

    private final Channel channel;
    private final BigDecimal resolution;
    private final Map<Trouble, String> details = new LinkedHashMap<>();
    private final Map<String, Integer> flags = new LinkedHashMap<>();
    private final List<Long> changes = new ArrayList<>();
    private int values;
    private int absent;
    private @Nullable Reading last;
    private @Nullable BigDecimal shown;
    private @Nullable BigDecimal step;
    private BigDecimal common = BigDecimal.ZERO; // of which every change was a multiple

    ChannelTrial(Channel channel, BigDecimal resolution) {
        this.channel = channel;
        this.resolution = resolution;
    }

    void add(Reading reading, long nanos) {
        last = reading;
        switch (reading) {
            case Reading.Value value -> take(value.shown(), nanos);
            case Reading.Doubtful doubtful -> {
                flags.merge(doubtful.flag(), 1, Integer::sum);
                take(doubtful.shown(), nanos);
            }
            case Reading.Absent none -> {
                absent++;
                details.put(none.trouble(), none.detail());
            }
        }
    }

    private void take(BigDecimal value, long nanos) {
        values++;
        if (shown != null && value.compareTo(shown) != 0) {
            BigDecimal change = value.subtract(shown).abs();
            step = step == null ? change : step.min(change);
            common = commonDivisor(common, change);
            changes.add(nanos);
        }
        shown = value;
    }

    private static BigDecimal commonDivisor(BigDecimal one, BigDecimal other) {
        int scale = Math.max(one.scale(), other.scale());
        return new BigDecimal(
                one.setScale(scale).unscaledValue().gcd(other.setScale(scale).unscaledValue()), scale);
    }

    /** The channel. */
    public Channel channel() {
        return channel;
    }

    /** How many reads gave a value, doubtful ones included. */
    public int values() {
        return values;
    }

    /** How many gave none. */
    public int absent() {
        return absent;
    }

    /** What the last read gave. */
    public Optional<Reading> last() {
        return Optional.ofNullable(last);
    }

    boolean lastWasValue() {
        return last instanceof Reading.Value || last instanceof Reading.Doubtful;
    }

    /** The smallest change that was seen between two reads, in the quantity's unit; never below what is described. */
    public Optional<BigDecimal> step() {
        return Optional.ofNullable(step);
    }

    /** The mean time between two changes, in seconds, if there were at least three. */
    public Optional<Double> secondsBetweenChanges() {
        return changes.size() < 3
                ? Optional.empty()
                : Optional.of((changes.getLast() - changes.getFirst()) / 1e9 / (changes.size() - 1));
    }

    List<String> troubles() {
        List<String> said = new ArrayList<>();
        details.forEach((trouble, detail) -> said.add(absent + " of " + (absent + values) + " reads gave nothing: "
                + detail + (detail.endsWith("?") ? " " : ". ") + advice(trouble)));
        return said;
    }

    private static String advice(Trouble trouble) {
        return switch (trouble) {
            case SILENCE ->
                "Something is there, but it does not answer: look at its number on the line, the speed, the ends of"
                        + " lines, and whether two wires are crossed; a slow device needs a larger timeout-ms.";
            case GARBLED ->
                "What comes is not what the description says: look at speed and parity, the number of registers,"
                        + " the pattern of the reply, and compare with the raw bytes above.";
            case REFUSED ->
                "The device understands and says no: look at register addresses (from 0), table, or the command.";
            case UNPLUGGED ->
                "There is no connection: look at the cable, the power, the address or name of the port, and"
                        + " whether another program holds it.";
        };
    }

    List<String> remarks() {
        List<String> said = new ArrayList<>();
        flags.forEach((flag, count) -> said.add(channel.name() + " was doubtful " + count + " times: " + flag + "."));
        if (values >= ENOUGH && changes.isEmpty() && channel.quantity() != Quantity.DEPOSIT) {
            said.add(channel.name() + " showed the same value " + values
                    + " times; breathe on the sensor, or look whether the device holds its display.");
        }
        if (changes.size() >= ENOUGH_CHANGES && common.compareTo(resolution.multiply(BigDecimal.TWO)) >= 0) {
            said.add(String.format(
                    Locale.ROOT,
                    "%s moves in steps of %s %s, while the description says %s; its resolution may be coarser.",
                    channel.name(),
                    common.toPlainString(),
                    channel.quantity().differenceUnit(),
                    resolution.toPlainString()));
        }
        return said;
    }
}
