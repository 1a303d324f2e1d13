// SPDX-License-Identifier: Apache-2.0
package isohume.station.rehearsal;

import isohume.device.modbus.DeviceDescription;
import isohume.simulator.BenchParameters;
import isohume.simulator.SimulatedBench;
import isohume.station.bench.OpenBench;
import isohume.station.job.Worksheet;
import java.time.Instant;

/**
 * A simulated bench with a worksheet for it, read over Modbus TCP as hardware would be. The worksheet names the
 * simulated devices as they call themselves: {@code mirror.yaml} is the one of the id {@code mirror}.
 */
public final class Rehearsal implements AutoCloseable {
    private final Worksheet worksheet;
    private final SimulatedBench simulated;
    private final OpenBench open;

    private Rehearsal(Worksheet worksheet, BenchParameters parameters, long seed, Instant start) {
        this.worksheet = worksheet;
        simulated = SimulatedBench.start(parameters, seed, start, 0);
        open = OpenBench.of(worksheet, this::description, simulated::now);
    }

    /**
     * A bench at rest, ready for the worksheet.
     *
     * @param seed decides everything that is drawn
     * @param start the instant at which the bench's time begins
     */
    public static Rehearsal of(Worksheet worksheet, BenchParameters parameters, long seed, Instant start) {
        return new Rehearsal(worksheet, parameters, seed, start);
    }

    private DeviceDescription description(String file) {
        return simulated.descriptions().stream()
                .filter(description -> file.equals(description.id() + ".yaml"))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the simulated bench has no " + file));
    }

    public SimulatedBench simulated() {
        return simulated;
    }

    public Worksheet worksheet() {
        return worksheet;
    }

    public OpenBench open() {
        return open;
    }

    @Override
    public void close() {
        open.close();
        simulated.close();
    }
}
