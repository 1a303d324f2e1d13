// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.Trouble;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** A description of a device that can only be read. */
public abstract class Channels implements DeviceDescription {
    private final Common common;
    private final List<Shown> shown;

    /** What it shows. */
    protected Channels(Common common, List<Shown> shown) {
        this.common = common;
        this.shown = List.copyOf(shown);
    }

    @Override
    public final String id() {
        return common.id();
    }

    @Override
    public final String title() {
        return common.title();
    }

    @Override
    public final Duration timeLimit() {
        return common.limit();
    }

    @Override
    public final List<Channel> channels() {
        return shown.stream().map(Shown::channel).toList();
    }

    @Override
    public final Optional<BigDecimal> resolution(String channel) {
        return Shown.resolution(shown.stream(), channel);
    }

    @Override
    public final boolean isChamber() {
        return false;
    }

    /** The same trouble on every channel. */
    public final List<Reading> absent(Instant at, Trouble trouble, String detail) {
        return shown.stream().map(one -> one.absent(at, trouble, detail)).toList();
    }
}
