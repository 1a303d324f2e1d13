// SPDX-License-Identifier: Apache-2.0
package isohume.station.demo;

import isohume.device.driver.DeviceDescription;
import isohume.simulator.BenchParameters;
import isohume.simulator.SimulatedBench;
import isohume.station.bench.OpenBench;
import isohume.station.job.Texts;
import isohume.station.job.Worksheet;
import java.time.Instant;

/** The simulated bench with the demonstration's worksheet, read over Modbus TCP as hardware would be. */
final class DemoBench implements AutoCloseable {
    private static final Texts DOCUMENTS = Texts.packagedWith(DemoBench.class);

    private static final java.time.Duration PATIENCE = java.time.Duration.ofSeconds(10); // simulated time waits for all
    private final SimulatedBench simulated;
    private final Worksheet worksheet = Worksheet.read(DOCUMENTS, "plan.yaml");
    private final OpenBench open;

    DemoBench(long seed, Instant start) {
        simulated = SimulatedBench.start(BenchParameters.portable(), seed, start, 0);
        open = OpenBench.of(worksheet, this::description, PATIENCE, simulated::now);
    }

    private DeviceDescription description(String file) {
        return simulated.descriptions().stream()
                .filter(description -> file.equals(description.id() + ".yaml"))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the simulated bench has no " + file));
    }

    SimulatedBench simulated() {
        return simulated;
    }

    Worksheet worksheet() {
        return worksheet;
    }

    OpenBench open() {
        return open;
    }

    @Override
    public void close() {
        open.close();
        simulated.close();
    }
}
