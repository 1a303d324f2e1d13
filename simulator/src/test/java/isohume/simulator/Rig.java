// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import isohume.device.Instrument;
import isohume.device.driver.Devices;
import isohume.device.protocol.Protocol;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A simulated device on a socket or on a pseudo-terminal, read by a driver. */
final class Rig implements AutoCloseable {
    static final Instant NOW = Instant.parse("2026-03-31T08:00:00Z");

    private final SimulatedBench bench = SimulatedBench.start(BenchParameters.portable(), 5, NOW, 0);
    private final Devices devices = new Devices();
    private final Wired wired;
    private final int port;
    private final @Nullable Pty pty;
    private final Instrument instrument;

    /**
     * What is read how.
     *
     * @param how what the bench speaks
     * @param unit whose faults matter
     * @param limit the description's time limit
     * @param line the description's way to the device, if it leads over a socket: {@code PORT} stands for the port
     * @param serial whether it leads over a pseudo-terminal instead
     * @param description the rest of the description, {@code LINE} standing for the way to the device
     */
    record Wired(Spoken how, int unit, Duration limit, String line, boolean serial, String description) {}

    Rig(Wired wired) {
        this.wired = wired;
        port = bench.speak(wired.how(), 0);
        pty = wired.serial() ? new Pty(port) : null;
        String line =
                pty == null ? wired.line().replace("PORT", String.valueOf(port)) : "serial: {path: " + pty.path() + "}";
        String text = wired.description()
                .replace("LINE", line)
                .replace("LIMIT", String.valueOf(wired.limit().toMillis()));
        instrument = devices.open(Protocol.parse(text, "rig.yaml"), () -> NOW);
    }

    Instrument instrument() {
        return instrument;
    }

    Duration timeLimit() {
        return wired.limit();
    }

    /** What the device shows now, in the order of the description's channels. */
    List<String> shown() {
        Instrument same = devices.open(bench.descriptions().get(index()), () -> NOW);
        return same.read().stream()
                .map(reading -> ((isohume.device.Reading.Value) reading).shown().toPlainString())
                .toList();
    }

    private int index() {
        return wired.unit() - Units.FIRST_TRANSMITTER + 3;
    }

    void fault(Fault fault) {
        bench.fault(wired.unit(), fault);
    }

    /** The device's end goes away; for a serial line, the port itself does. */
    void unplug() {
        if (pty != null) {
            pty.unplug();
        } else {
            bench.hush(port);
        }
    }

    void plugIn() {
        if (pty != null) {
            pty.plugIn();
        } else {
            int same = bench.speak(wired.how(), port);
            assert same == port;
        }
    }

    @Override
    public void close() {
        instrument.close();
        devices.close();
        if (pty != null) {
            pty.close();
        }
        bench.close();
    }
}
