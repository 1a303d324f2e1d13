// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Reading;
import isohume.device.driver.DeviceDescription;
import isohume.device.modbus.ModbusDescription;
import isohume.simulator.BenchParameters;
import isohume.simulator.SimulatedBench;
import isohume.station.job.Worksheet;
import isohume.station.rehearsal.BenchPapers;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class OpenBenchTest {
    private static final Instant START = Instant.parse("2026-03-02T07:00:00Z");

    private static DeviceDescription description(SimulatedBench bench, String file, int chamberPort) {
        ModbusDescription found = bench.descriptions().stream()
                .filter(one -> file.equals(one.id() + ".yaml"))
                .findFirst()
                .orElseThrow();
        return found.isChamber() ? found.withAddress("127.0.0.1", chamberPort) : found;
    }

    @Test
    void a_dead_chamber_delays_no_other_device() throws IOException {
        BenchParameters portable = BenchParameters.portable();
        Worksheet worksheet = BenchPapers.worksheet(portable, "a bench", "  - {temperature: 23, humidity: [40]}\n");
        try (ServerSocket silent = new ServerSocket(0, 5, InetAddress.getLoopbackAddress()); // nobody ever answers
                SimulatedBench bench = SimulatedBench.start(portable, 1, START, 0);
                OpenBench open = OpenBench.abreast(
                        worksheet,
                        file -> description(bench, file, silent.getLocalPort()),
                        Duration.ofMillis(300),
                        bench::now)) {
            long begun = System.nanoTime();
            assertEquals(List.of(), open.bench().chamber().read(), "it is read with the others");
            List<Reading> readings = open.bench().instruments().getFirst().read();
            Duration took = Duration.ofNanos(System.nanoTime() - begun);
            Duration limit = open.connected().getFirst().description().timeLimit();
            assertTrue(took.compareTo(limit) < 0, "took " + took + ", the chamber may take " + limit);
            assertEquals("chamber", readings.getFirst().channel().instrument());
            for (Reading reading : readings) {
                boolean chamber = reading.channel().instrument().equals("chamber");
                assertEquals(chamber, reading instanceof Reading.Absent, reading::toString);
            }
        }
    }
}
