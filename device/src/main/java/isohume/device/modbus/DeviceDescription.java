// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Channel;
import isohume.device.sheet.Sheet;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * A Modbus TCP device as a person describes it: where it is, which registers mean what, and, for a chamber, how it is
 * told where to go. The format is {@code docs/schemas/device.schema.json}. Immutable.
 */
public final class DeviceDescription {
    private final String id;
    private final String title;
    private final Address address;
    private final Duration limit;
    private final List<Shown> shown;
    private final Optional<StatusWord> status;
    private final Optional<Controls> controls;

    /** @param unit the device's number behind the address, 0 to 255 */
    record Address(String host, int port, int unit) {}

    DeviceDescription(
            String id,
            String title,
            Address address,
            Duration limit,
            List<Shown> shown,
            Optional<StatusWord> status,
            Optional<Controls> controls) {
        this.id = id;
        this.title = title;
        this.address = address;
        this.limit = limit;
        this.shown = List.copyOf(shown);
        this.status = status;
        this.controls = controls;
    }

    /**
     * Reads a description from a file.
     *
     * @throws isohume.device.sheet.SheetError with line and column, if it is not a valid description
     */
    public static DeviceDescription read(Path file) {
        return new DescriptionReader(Sheet.read(file)).description();
    }

    /**
     * Reads a description from a text.
     *
     * @param name what errors call it
     * @throws isohume.device.sheet.SheetError with line and column, if it is not a valid description
     */
    public static DeviceDescription parse(String text, String name) {
        return new DescriptionReader(Sheet.parse(text, name)).description();
    }

    /** The same device at another address. */
    public DeviceDescription withAddress(String host, int port) {
        Address there = new Address(host, port, address.unit());
        return new DeviceDescription(id, title, there, limit, shown, status, controls);
    }

    /** The device's id, which its channels carry. */
    public String id() {
        return id;
    }

    public String title() {
        return title;
    }

    public String host() {
        return address.host();
    }

    public int port() {
        return address.port();
    }

    /** How long a read or a request may take in all. */
    public Duration timeLimit() {
        return limit;
    }

    public List<Channel> channels() {
        return shown.stream().map(Shown::channel).toList();
    }

    /** The step that the named channel's values are shown in, in the quantity's unit. */
    public Optional<BigDecimal> resolution(String channel) {
        return shown.stream()
                .filter(s -> s.channel().name().equals(channel))
                .map(Shown::resolution)
                .findFirst();
    }

    /** Whether the device can be told where to go. */
    public boolean isChamber() {
        return controls.isPresent();
    }

    /** The Modbus unit under which it answers. */
    public int unit() {
        return address.unit();
    }

    List<Shown> shown() {
        return shown;
    }

    Optional<StatusWord> status() {
        return status;
    }

    Optional<Controls> controls() {
        return controls;
    }
}
