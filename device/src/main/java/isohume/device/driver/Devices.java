// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.Instrument;
import isohume.device.line.Lines;
import isohume.device.line.Tap;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * Opens devices and owns their connections: devices at the same place share one. Safe for any thread. Closing it closes
 * every connection; a device whose line is closed reads as unplugged.
 */
public final class Devices implements AutoCloseable {
    private final Lines lines;
    private final List<Instrument> opened = new CopyOnWriteArrayList<>();

    /** No devices yet. */
    public Devices() {
        this(Tap.NONE);
    }

    /** No devices yet; {@code tap} will see their bytes. */
    public Devices(Tap tap) {
        lines = new Lines(tap);
    }

    /** As {@link DeviceDescription#open}. */
    public Instrument open(DeviceDescription description, InstantSource clock) {
        Instrument instrument = description.open(lines, clock);
        opened.add(instrument);
        return instrument;
    }

    /** Closes every connection. Idempotent; never throws. */
    @Override
    public void close() {
        opened.forEach(Instrument::close);
        lines.close();
    }
}
