// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Instrument;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Opens devices and owns their connections: devices on the same host and port share one. Safe for any thread.
 * Closing it closes every connection; a device whose line is closed reads as unplugged.
 */
public final class Devices implements AutoCloseable {
    private final Map<String, TcpLine> lines = new HashMap<>();
    private final Map<TcpLine, Integer> users = new HashMap<>();
    private boolean closed;

    /** No devices yet. */
    public Devices() {}

    /**
     * The device of a description: a {@link isohume.device.Chamber} if the description has a chamber section. Touches
     * no wire: the connection is made by the first read or request, and made again by itself after it was lost.
     *
     * @param clock dates the readings
     * @throws IllegalStateException if closed
     */
    public synchronized Instrument open(DeviceDescription description, InstantSource clock) {
        if (closed) {
            throw new IllegalStateException("the lines are closed; " + description.id() + " cannot be opened");
        }
        String place = description.host().toLowerCase(Locale.ROOT) + ":" + description.port();
        TcpLine line = lines.computeIfAbsent(place, p -> new TcpLine(description.host(), description.port()));
        users.merge(line, 1, Integer::sum);
        AtomicBoolean released = new AtomicBoolean();
        ModbusInstrument instrument = new ModbusInstrument(description, line, clock, () -> {
            if (!released.getAndSet(true)) {
                release(place, line);
            }
        });
        return description
                .controls()
                .<Instrument>map(controls -> new ModbusChamber(description, controls, instrument, line))
                .orElse(instrument);
    }

    private synchronized void release(String place, TcpLine line) {
        if (users.merge(line, -1, Integer::sum) == 0) {
            users.remove(line);
            lines.remove(place, line);
            line.close();
        }
    }

    /** Closes every connection. Idempotent; never throws. */
    @Override
    public synchronized void close() {
        closed = true;
        lines.values().forEach(TcpLine::close);
    }
}
