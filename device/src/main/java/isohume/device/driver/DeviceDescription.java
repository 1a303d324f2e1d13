// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.Channel;
import isohume.device.Instrument;
import isohume.device.line.Lines;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;

/** A device as a person describes it, in the format {@code docs/schemas/device.schema.json}. Immutable. */
public interface DeviceDescription {
    /** The device's id, which its channels carry. */
    String id();

    String title();

    /** Where it is, as people write it: {@code 192.168.1.20:502} or {@code /dev/ttyUSB0}. */
    String place();

    /** How long a read or a request may take in all. */
    Duration timeLimit();

    List<Channel> channels();

    /** The step that the named channel's values are shown in, in the quantity's unit. */
    Optional<BigDecimal> resolution(String channel);

    /** Whether the device can be told where to go. */
    boolean isChamber();

    /**
     * The device, a {@link isohume.device.Chamber} if it can be told where to go. Touches no wire: the connection is
     * made by the first read or request, and made again by itself after it was lost.
     *
     * @param clock dates the readings
     * @throws IllegalStateException if the lines are closed
     */
    Instrument open(Lines lines, InstantSource clock);
}
