// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One channel of a device and how its values are shown.
 *
 * @param resolution the step that values are shown in, in the quantity's unit; above zero
 * @param limits what is beyond them is doubtful
 */
public record Shown(Channel channel, BigDecimal resolution, Optional<Limits> limits) {
    /** The multiple of the resolution nearest to a value, halves to the even multiple, with the resolution's digits. */
    BigDecimal rounded(BigDecimal value) {
        BigDecimal step = resolution.stripTrailingZeros();
        return value.divide(step, 0, RoundingMode.HALF_EVEN).multiply(step).setScale(Math.max(0, step.scale()));
    }

    /** The resolution of the channel with this name. */
    public static Optional<BigDecimal> resolution(Stream<Shown> channels, String name) {
        return channels.filter(one -> one.channel().name().equals(name))
                .map(Shown::resolution)
                .findFirst();
    }

    /**
     * What a value means as a reading.
     *
     * @param value in the quantity's unit, unrounded
     * @param flags what else casts doubt on it
     * @param holder what held the value, for messages: {@code the registers hold}
     */
    public Reading reading(BigDecimal value, String raw, List<String> flags, Instant at, String holder) {
        BigDecimal rounded = rounded(value);
        String text = rounded.toPlainString() + " " + channel.quantity().unit();
        if (!Unit.possible(channel.quantity(), rounded)) {
            return absent(at, Trouble.GARBLED, holder + " " + text + ", which nothing can have (" + raw + ")");
        }
        List<String> doubts = new ArrayList<>(flags);
        limits.filter(bounds -> !bounds.hold(value))
                .ifPresent(bounds ->
                        doubts.add("outside " + bounds.in(channel.quantity().unit())));
        return doubts.isEmpty()
                ? new Reading.Value(channel, at, rounded, raw)
                : new Reading.Doubtful(channel, at, rounded, raw, String.join("; ", doubts));
    }

    /** No reading. */
    public Reading absent(Instant at, Trouble trouble, String detail) {
        return new Reading.Absent(channel, at, trouble, detail);
    }
}
