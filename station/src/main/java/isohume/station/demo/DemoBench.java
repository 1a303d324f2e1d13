// SPDX-License-Identifier: Apache-2.0
package isohume.station.demo;

import isohume.simulator.BenchParameters;
import isohume.simulator.SimulatedBench;
import isohume.station.bench.OpenBench;
import isohume.station.job.Texts;
import isohume.station.job.Worksheet;
import java.time.Instant;

/** The simulated bench with the demonstration's worksheet, read over Modbus TCP as hardware would be. */
final class DemoBench implements AutoCloseable {
    static final String HOST = "127.0.0.1";

    private static final Texts DOCUMENTS = Texts.packagedWith(DemoBench.class);
    private static final Texts DESCRIPTIONS =
            name -> Texts.packagedWith(SimulatedBench.class).text("devices/" + name);

    private final SimulatedBench simulated;
    private final Worksheet worksheet = Worksheet.read(DOCUMENTS, "plan.yaml");
    private final OpenBench open;

    DemoBench(long seed, Instant start) {
        simulated = SimulatedBench.start(BenchParameters.portable(), seed, start, 0);
        open = OpenBench.of(
                worksheet,
                DESCRIPTIONS,
                description -> description.withAddress(HOST, simulated.port()),
                simulated::now);
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
